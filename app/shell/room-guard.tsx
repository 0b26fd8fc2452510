import { Component, type ReactNode } from 'react';
import { Note } from '../ui/note';
import { hushNow } from '../ui/say';
import { shellWords as words } from '../words/shell';

interface RoomGuardProps {
  readonly room: string;
  readonly children: ReactNode;
}

/** Keeps a fault in one room from taking the others with it. React asks for a class here. */
export class RoomGuard extends Component<RoomGuardProps, { readonly broken: boolean }> {
  override state = { broken: false };

  static getDerivedStateFromError() {
    return { broken: true };
  }

  override componentWillUnmount() {
    hushNow();
  }

  override render() {
    if (!this.state.broken) return this.props.children;
    return (
      <main>
        <Note tone="stop" action={{ words: words.tryAgain, onPress: () => this.setState({ broken: false }) }}>
          {words.broken(this.props.room)}
        </Note>
      </main>
    );
  }
}
