import { useGarment } from '../state/garment-store';
import { useKept } from '../state/kept-store';
import { editHere } from '../storage/bring-in';
import { saveProject } from '../storage/save-project';
import { Note } from '../ui/note';
import { shellWords as words } from '../words/shell';

/** Says at once when a change could not be kept on this device, or when another window has the garment in hand. */
export function KeptNotice() {
  const elsewhere = useGarment((state) => state.editing === 'elsewhere');
  const failure = useGarment((state) => (state.saving === 'failed' ? state.failure : undefined));
  const cleared = useKept((state) => state.cleared);
  const garment = useGarment((state) => state.garment);
  if (!garment) return null;
  if (elsewhere) {
    return (
      <Note tone="stop" action={{ words: words.editHere, onPress: () => void editHere() }}>
        {words.elsewhere}
      </Note>
    );
  }
  if (failure === undefined && cleared) {
    return (
      <Note tone="stop" action={{ words: words.saveToFile, onPress: () => void saveProject(garment) }}>
        {words.cleared}
      </Note>
    );
  }
  if (failure === undefined) return null;
  return (
    <Note tone="stop" action={{ words: words.saveToFile, onPress: () => void saveProject(garment) }}>
      {words.notKept(failure)}
    </Note>
  );
}
