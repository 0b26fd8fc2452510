import { isOld } from '../state/copy-age';
import { useGarment } from '../state/garment-store';
import { useCopyAge } from '../storage/use-copy-age';
import { shellWords as words } from '../words/shell';
import { storageWords } from '../words/storage';
import styles from './header.module.css';
import { saveAndSay } from './save-and-say';

/** Whether what is on the table is kept; and, once it is, a quiet word when the last copy in a file is old. */
export function KeptMark() {
  const saving = useGarment((state) => (state.editing === 'here' ? state.saving : 'looking'));
  const garmentId = useGarment((state) => state.garment?.id);
  const age = useCopyAge(garmentId, saving === 'saved');
  if (saving !== 'saved' || !age || !isOld(age)) {
    return (
      <span className={styles.saving} data-saving={saving}>
        {words.saving[saving]}
      </span>
    );
  }
  const save = () => {
    const { garment } = useGarment.getState();
    if (garment) void saveAndSay(garment);
  };
  return (
    <button type="button" className={styles.saving} title={storageWords.copyAge(age)} onClick={save}>
      <span className="only-heard">{words.saving.saved}. </span>
      {words.copyOld(age)}
    </button>
  );
}
