import { create } from 'zustand';
import type { PlaceKey } from '../../core/cloth/lay-by-hand';
import type { Lay } from '../../core/cloth/lay-task';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth, PieceJoin } from '../../core/garment/garment-cloth';
import { useGarment } from '../state/garment-store';

/** Laying that goes on: the share of its time gone by, and the best lay so far. */
export interface Running {
  readonly clothId: string;
  readonly share: number;
  readonly live: Lay | undefined;
}

/** Which lays were made to be set beside one another, and of what: another cloth or other pieces make them void. */
export interface Beside {
  readonly mark: string;
  readonly pieces: Garment['pieces'];
  readonly lays: ReadonlyMap<string, Lay>;
}

/** What the search for help with a short cloth came to: another way of folding it, a join, or both. */
export type HelpSought =
  | { readonly kind: 'seeking' }
  | { readonly kind: 'none' }
  | {
      readonly kind: 'found';
      readonly folded: GarmentCloth['folded'];
      readonly join: Pick<PieceJoin, 'id' | 'at'> | undefined;
      readonly lay: Lay;
    };

interface ClothState {
  readonly clothId: string | undefined;
  readonly inHand: PlaceKey | undefined;
  readonly running: Running | undefined;
  readonly trouble: string | undefined;
  readonly beside: Beside | undefined;
  /** How much of setting beside is done, while it goes on. */
  readonly besideShare: number | undefined;
  readonly helps: HelpSought | undefined;
  /** What is being drawn on the cloth, corner by corner. */
  readonly drawing:
    | { readonly what: 'flaw' | 'shape'; readonly corners: readonly { x: number; y: number }[] }
    | undefined;
  readonly seconds: number;
  /** How often the lay was begun: chance begins elsewhere each time. */
  readonly runs: number;
}

const begin: ClothState = {
  clothId: undefined,
  inHand: undefined,
  running: undefined,
  trouble: undefined,
  beside: undefined,
  besideShare: undefined,
  helps: undefined,
  drawing: undefined,
  seconds: 10,
  runs: 0,
};

/** What is being looked at in the Cloth room. The cloths and their lays are the garment's. */
export const useCloth = create<ClothState>(() => begin);

/** The keys under which lays are set beside one another. */
export const besideKey = ({ width, grain, folded }: Pick<GarmentCloth, 'width' | 'grain' | 'folded'>) =>
  `${Math.round(width * 100)} ${grain} ${folded}`;

/** Takes another cloth in hand. */
export function takeCloth(clothId: string): void {
  useCloth.setState({ clothId, inHand: undefined, trouble: undefined, helps: undefined, drawing: undefined });
}

// Another garment has other cloths.
useGarment.subscribe((now, before) => {
  if (now.garment?.id !== before.garment?.id) useCloth.setState(begin);
});
