import type { Diagram, Quad } from '../../core/garment/diagram';
import { picturesOf, type ReadyPicture } from '../photo/picture-store';
import { say } from '../ui/say';
import { diagramWords } from '../words/diagram';
import type { CornerProposal } from '../workers/photo-calls';
import { photoWork } from '../workers/photo-workers';
import { beginSearch, endSearch, isSameQuad, proposalsFor, putSearch, setCorners } from './corner-search';
import { followedIn, SURE } from './found-sides';

const words = diagramWords.square.search;

/** Keeps what was found while the picture came in. */
export function keepProposals(diagramId: string, found: readonly CornerProposal[] | undefined, corners: Quad): void {
  putSearch(diagramId, {
    ...(found ? { proposals: found } : {}),
    ...(found?.length === 0 ? { outcome: { kind: 'nothing-sure', corners } } : {}),
  });
}

/**
 * What a picture may be squared up by, best first; an empty list when nothing is sure enough, `undefined` when the search
 * was stopped or failed.
 */
export async function proposalsIn(
  { small }: ReadyPicture,
  options: { readonly signal: AbortSignal; readonly onProgress: (share: number) => void },
): Promise<readonly CornerProposal[] | undefined> {
  const answer = await photoWork.call('proposeCorners', { small }, options);
  if (answer.kind !== 'proposed') return undefined;
  return (answer.proposals[0]?.sure ?? 0) >= SURE ? answer.proposals : [];
}

/** Looks for corners and takes the best proposal as one step; leaves them where nothing is sure enough. */
export async function findCorners({ id }: Diagram, corners: Quad): Promise<void> {
  const { photo } = picturesOf(id);
  if (!photo) return;
  const { signal, onProgress, done } = beginSearch(id, 'find');
  const proposals = await proposalsIn(photo, { signal, onProgress });
  done();
  const best = proposals?.[0];
  if (!proposals) endSearch(id, { kind: signal.aborted ? 'stopped' : 'failed', corners });
  else if (!best) endSearch(id, { kind: 'nothing-sure', corners });
  else {
    putSearch(id, { proposals });
    take(id, best);
    say(words.on(best.kind, 1, proposals.length));
  }
}

/** The place of the proposal that the corners lie on now, if they lie on one. */
export function proposalOn(proposals: readonly CornerProposal[], corners: Quad): number | undefined {
  const at = proposals.findIndex((each) => isSameQuad(each.corners, corners));
  return at < 0 ? undefined : at;
}

/** The next proposal, after the last the first, as one step. */
export function nextProposal(diagramId: string, corners: Quad): void {
  const proposals = proposalsFor(diagramId);
  const at = ((proposalOn(proposals, corners) ?? -1) + 1) % Math.max(1, proposals.length);
  const next = proposals[at];
  if (!next) return;
  take(diagramId, next);
  say(words.on(next.kind, at + 1, proposals.length));
}

function take(id: string, proposal: CornerProposal): void {
  const { corners } = proposal;
  setCorners(id, { corners, followed: followedIn(proposal) }, diagramWords.labels.corners);
}
