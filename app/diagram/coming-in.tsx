import { Note } from '../ui/note';
import { ShareDone } from '../ui/share-done';
import { diagramWords as words } from '../words/diagram';
import { useBringingIn } from './bring-in';

/** How far a picture is on its way in. */
export function ComingIn() {
  const { busy, looking } = useBringingIn();
  if (looking) {
    return <ShareDone label={words.square.search.running.find} share={looking.share} onStop={looking.stop} />;
  }
  return busy && <Note tone="plain">{words.opening}</Note>;
}
