import { Component, type ReactNode } from 'react';
import { hushNow } from '../ui/say';
import { Broken } from './broken';

interface RoomGuardProps {
  readonly room: string;
  /** Said when it breaks. */
  readonly sentence: string;
  /** Before it is shown once more. */
  readonly onTryAgain?: () => void;
  readonly children: ReactNode;
}

/** Keeps a fault in one room from taking the others with it. React asks for a class here. */
export class RoomGuard extends Component<
  RoomGuardProps,
  { readonly broken?: { readonly fault: unknown } | undefined }
> {
  override state: { readonly broken?: { readonly fault: unknown } | undefined } = {};

  static getDerivedStateFromError(fault: unknown) {
    return { broken: { fault } };
  }

  override componentWillUnmount() {
    hushNow();
  }

  override render() {
    const { broken } = this.state;
    const { room, sentence, children } = this.props;
    if (!broken) return children;
    return (
      <Broken
        where={room}
        sentence={sentence}
        fault={broken.fault}
        onTryAgain={() => {
          this.props.onTryAgain?.();
          this.setState({ broken: undefined });
        }}
      />
    );
  }
}
