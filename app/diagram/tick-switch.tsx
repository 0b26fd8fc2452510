import { usePictureInk } from '../photo/picture-ink';
import type { ReadyPicture } from '../photo/picture-store';
import { useInk } from '../photo/use-ink';
import { Note } from '../ui/note';
import { Switch } from '../ui/switch';
import { diagramWords } from '../words/diagram';
import { useDesk } from './desk-store';

const words = diagramWords.known;

/** Whether ends of known lengths go to printed ticks; while they do, the lines of the picture are read. */
export function TickSwitch({ photo }: { readonly photo: ReadyPicture }) {
  const toTicks = useDesk((desk) => desk.toTicks);
  const ink = usePictureInk((state) => state.ink);

  useInk(photo, toTicks);

  return (
    <>
      <Switch label={words.toTicks} on={toTicks} onChange={(on) => useDesk.setState({ toTicks: on })} />
      {toTicks && ink.kind === 'reading' && <Note tone="plain">{words.ticksReading(Math.round(ink.share * 100))}</Note>}
      {toTicks && ink.kind === 'unreadable' && <Note tone="warn">{words.ticksUnreadable}</Note>}
    </>
  );
}
