import { useGarment } from '../state/garment-store';
import { saveProject } from '../storage/save-project';
import { Note } from '../ui/note';
import { shellWords as words } from '../words/shell';

/** Says at once when a change could not be kept on this device, and offers a file instead. */
export function KeptNotice() {
  const failure = useGarment((state) => (state.saving === 'failed' ? state.failure : undefined));
  const garment = useGarment((state) => state.garment);
  if (failure === undefined || !garment) return null;
  return (
    <Note tone="stop" action={{ words: words.saveToFile, onPress: () => void saveProject(garment) }}>
      {words.notKept(failure)}
    </Note>
  );
}
