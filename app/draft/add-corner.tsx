import { useState } from 'react';
import { insertCorner, NEAR_CORNER } from '../../core/garment/corner-edits';
import { outlineOf } from '../../core/garment/outline';
import type { Edge, Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { newId } from '../state/new-id';
import { useShownIn } from '../state/shown-in';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { draftWords as words } from '../words/draft';
import styles from './draft.module.css';
import { editPiece } from './edit-piece';

interface AddCornerProps {
  readonly piece: Piece;
  readonly index: number;
  readonly edge: Edge;
}

/** A corner put on an edge so far from the one it begins at, along the line; in its middle unless she says. */
export function AddCorner({ piece, index, edge }: AddCornerProps) {
  const shownIn = useShownIn();
  const [wanted, setWanted] = useState<number>();
  const length = pathLength(outlineOf(piece).edges[index] ?? []);
  const along = wanted !== undefined && wanted < length - NEAR_CORNER ? wanted : length / 2;
  const add = () => {
    const after = insertCorner(piece, edge.id, along, newId);
    editPiece(words.steps.addPoint, piece.id, () => after);
    const made = after.corners[index + 1];
    if (made) useTable.getState().choose({ kind: 'corner', pieceId: piece.id, cornerId: made.id });
  };
  if (length < 3 * NEAR_CORNER) return null;
  return (
    <div className={styles.row}>
      <LengthField
        label={words.cornerFrom(index + 1)}
        value={along}
        shownIn={shownIn}
        min={NEAR_CORNER}
        max={length - NEAR_CORNER}
        onCommit={setWanted}
      />
      <Button icon="corner" onPress={add}>
        {words.addCorner}
      </Button>
    </div>
  );
}
