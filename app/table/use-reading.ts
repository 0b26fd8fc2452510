import { useEffect, useState } from 'react';
import type { Piece } from '../../core/garment/piece';
import type { TablePoint } from '../../core/geometry/point';
import type { ShownIn } from '../../core/units/inch';
import type { Chosen } from '../state/table-store';
import { say } from '../ui/say';
import { placeOfChosen, readPlace, type Telling } from './read-place';
import type { KeyPress } from './tool';
import { walked } from './walk';

/** The pieces that lie on a table, for those who go over it by keys or hear it. */
export interface Lying {
  pieces(): readonly Piece[];
  readonly shownIn: ShownIn;
}

const NOTHING: Chosen = { kind: 'nothing' };

/** Goes over the pieces by keys and tells where one is, without changing or choosing anything. */
export function useReading(lying: Lying | undefined) {
  const [at, setAt] = useState<Chosen>(NOTHING);
  const here = lying && at.kind !== 'nothing' ? spotOf(lying.pieces(), at) : undefined;
  // What was there may have been taken away meanwhile.
  const gone = at.kind !== 'nothing' && !here;
  useEffect(() => {
    if (gone) setAt(NOTHING);
  }, [gone]);

  function tell({ pieces, shownIn }: Lying, chosen: Chosen, telling: Telling) {
    const piece = 'pieceId' in chosen ? pieces().find(({ id }) => id === chosen.pieceId) : undefined;
    const told = piece && readPlace(piece, chosen, shownIn, telling);
    if (told) say(told);
  }

  return {
    here,
    /** Whether the key led somewhere. Enter is left to whoever can press there. */
    key(press: KeyPress): boolean {
      if (!lying) return false;
      const next = walked(lying.pieces(), at, press);
      if (next) {
        setAt(next);
        tell(lying, next, 'short');
      } else if (press.key === ' ' && here) tell(lying, at, 'full');
      else if (press.key === 'Escape' && here) setAt(NOTHING);
      else return false;
      return true;
    },
  };
}

function spotOf(pieces: readonly Piece[], at: Chosen): TablePoint | undefined {
  const piece = 'pieceId' in at ? pieces.find(({ id }) => id === at.pieceId) : undefined;
  return piece && placeOfChosen(piece, at);
}
