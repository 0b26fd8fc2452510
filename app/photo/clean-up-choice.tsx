import type { CleanUp } from '../../core/picture/cleaned';
import { useTable } from '../state/table-store';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { ShareDone } from '../ui/share-done';
import { cleanUpWords as words } from '../words/clean-up';
import { useCleaning } from './use-cleaned';

const WAYS = ['as-it-is', 'even', 'contrast', 'black-and-white'] as const satisfies readonly (CleanUp | 'as-it-is')[];

/** How the picture of a diagram is shown; what is stored stays as it came. */
export function CleanUpChoice({ diagramId }: { readonly diagramId: string }) {
  const how = useTable((table) => table.cleanUp[diagramId]);
  const setCleanUp = useTable((table) => table.setCleanUp);
  const share = useCleaning((cleaning) => cleaning.share[diagramId]);
  const failed = useCleaning((cleaning) => cleaning.failed === diagramId);
  return (
    <>
      <Pick
        label={words.label}
        labelHidden
        value={how ?? 'as-it-is'}
        options={WAYS.map((value) => ({ value, words: words.how[value] }))}
        onChange={(value) => setCleanUp(diagramId, value === 'as-it-is' ? undefined : value)}
      />
      {share !== undefined && (
        <ShareDone label={words.busy} share={share} onStop={() => setCleanUp(diagramId, undefined)} />
      )}
      {failed && <Note tone="plain">{words.failed}</Note>}
    </>
  );
}
