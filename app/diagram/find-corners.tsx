import type { Diagram, Quad } from '../../core/garment/diagram';
import type { Pictures } from '../photo/picture-store';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { ShareDone } from '../ui/share-done';
import { diagramWords } from '../words/diagram';
import { outcomeWords, stopCornerSearch, useCornerSearch } from './corner-search';
import styles from './diagram-room.module.css';
import { drawToEdges } from './follow-edges';
import { findCorners, nextProposal, proposalOn } from './take-proposal';

const words = diagramWords.square.search;

interface FindCornersProps {
  readonly diagram: Diagram;
  readonly corners: Quad;
  readonly pictures: Pictures;
}

/** Help with the corners: proposals from the picture, and what she placed drawn to the edges. */
export function FindCorners({ diagram, corners, pictures }: FindCornersProps) {
  const search = useCornerSearch(diagram.id);
  const { running, proposals = [] } = search;
  const on = proposalOn(proposals, corners);
  const proposal = on === undefined ? undefined : proposals[on];
  const outcome = outcomeWords(search, corners);
  const cannot = !pictures.photo || running !== undefined;
  return (
    <>
      <div className={styles.actions}>
        <Button icon="corner" disabled={cannot} onPress={() => void findCorners(diagram, corners)}>
          {words.find}
        </Button>
        {(proposals.length > 1 || (proposals.length > 0 && on === undefined)) && (
          <Button disabled={cannot} onPress={() => nextProposal(diagram.id, corners)}>
            {on === undefined ? words.back : words.another}
          </Button>
        )}
        <Button icon="straight" disabled={cannot} onPress={() => void drawToEdges(diagram, corners)}>
          {words.refine}
        </Button>
      </div>
      {running && (
        <ShareDone
          label={words.running[running.what]}
          share={running.share}
          onStop={() => stopCornerSearch(diagram.id)}
        />
      )}
      {on !== undefined && proposal && <p>{words.on(proposal.kind, on + 1, proposals.length)}</p>}
      {outcome !== undefined && <Note tone="plain">{outcome}</Note>}
    </>
  );
}
