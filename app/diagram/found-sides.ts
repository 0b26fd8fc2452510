import type { Followed, SeenRectangle } from '../../core/garment/diagram';
import type { CornerProposal } from '../workers/photo-calls';

/** A page or frame seen less well than this is for her to judge: of what is wrong none comes near it. */
export const SURE = 0.3;

/** The curved sides of what was found, where they bow enough to tell. */
export function followedIn({ bowed, through }: CornerProposal): Followed | undefined {
  return bowed ? { kind: 'sides', through } : undefined;
}

/** The surest page and the surest frame, kept with the diagram as a check on how true it lies. */
export function seenIn(proposals: readonly CornerProposal[]): SeenRectangle[] {
  return (['page', 'frame'] as const).flatMap((wanted) => {
    const found = proposals.find(({ kind, sure }) => kind === wanted && sure >= SURE);
    return found ? [{ corners: found.corners, through: found.through }] : [];
  });
}
