import { create } from 'zustand';
import { cornersOfSquares } from '../../core/diagram/followed-plane';
import type { Diagram, Followed, Quad } from '../../core/garment/diagram';
import { distance } from '../../core/geometry/point';
import type { NotRefined } from '../../core/picture/corners-refined';
import type { NoGrid } from '../../core/picture/grid';
import { picturesOf, type ReadyPicture } from '../photo/picture-store';
import { say } from '../ui/say';
import { diagramWords } from '../words/diagram';
import type { CornerProposal } from '../workers/photo-calls';
import { photoWork } from '../workers/photo-workers';
import { editDiagram } from './change-diagram';
import { useDesk } from './desk-store';
import { followedIn, SURE, seenIn } from './found-sides';

const words = diagramWords.square.search;

/** What came of the last search, and of which corners it speaks. */
type Outcome = { readonly corners: Quad } & (
  | { readonly kind: 'nothing-sure' | 'stopped' | 'failed' }
  /** How far each corner moved, in pixels of the whole picture. */
  | { readonly kind: 'moved'; readonly by: readonly number[] }
  | NotRefined
  | NoGrid
);

/** The search for the corners of one diagram. */
interface CornerSearch {
  readonly running?: { readonly what: 'find' | 'refine' | 'squares'; readonly share: number };
  /** Best first. */
  readonly proposals?: readonly CornerProposal[];
  readonly outcome?: Outcome;
}

const none: CornerSearch = {};

const useSearches = create<Readonly<Record<string, CornerSearch>>>(() => ({}));

/** Where the search for the corners of a diagram stands. */
export function useCornerSearch(diagramId: string): CornerSearch {
  return useSearches((all) => all[diagramId] ?? none);
}

/** Keeps what was found while the picture came in. */
export function keepProposals(diagramId: string, found: readonly CornerProposal[] | undefined, corners: Quad): void {
  put(diagramId, {
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

const stops = new Map<string, AbortController>();

/** Looks for corners and takes the best proposal as one step; leaves them where nothing is sure enough. */
export async function findCorners({ id }: Diagram, corners: Quad): Promise<void> {
  const { photo } = picturesOf(id);
  if (!photo) return;
  const { signal, onProgress } = begin(id, 'find');
  const proposals = await proposalsIn(photo, { signal, onProgress });
  stops.delete(id);
  const best = proposals?.[0];
  if (!proposals) end(id, { kind: signal.aborted ? 'stopped' : 'failed', corners });
  else if (!best) end(id, { kind: 'nothing-sure', corners });
  else {
    put(id, { proposals });
    take(id, best);
    say(words.on(best.kind, 1, proposals.length));
  }
}

/** The place of the proposal that the corners lie on now, if they lie on one. */
export function proposalOn(proposals: readonly CornerProposal[], corners: Quad): number | undefined {
  const at = proposals.findIndex((each) => isSame(each.corners, corners));
  return at < 0 ? undefined : at;
}

/** The next proposal, after the last the first, as one step. */
export function nextProposal(diagramId: string, corners: Quad): void {
  const { proposals = [] } = useSearches.getState()[diagramId] ?? none;
  const at = ((proposalOn(proposals, corners) ?? -1) + 1) % Math.max(1, proposals.length);
  const next = proposals[at];
  if (!next) return;
  take(diagramId, next);
  say(words.on(next.kind, at + 1, proposals.length));
}

/** Draws the corners onto the edges or lines seen between them, as one step, and tells how far each moved. */
export function drawToEdges(diagram: Diagram, corners: Quad): Promise<void> {
  const { squareUp } = diagram;
  return followEdges(diagram, corners, squareUp.kind === 'rectangle' && squareUp.followed?.kind === 'sides');
}

/** Follows the sides as they curve, corners included, as one step; she can move what was found. */
export function followSides(diagram: Diagram, corners: Quad): Promise<void> {
  return followEdges(diagram, corners, true);
}

async function followEdges({ id }: Diagram, corners: Quad, curved: boolean): Promise<void> {
  const { photo } = picturesOf(id);
  if (!photo) return;
  const { signal, onProgress } = begin(id, 'refine');
  const { key, file } = photo;
  const answer = await photoWork.call('refineCorners', { key, file, corners }, { signal, onProgress });
  stops.delete(id);
  if (answer.kind === 'refined') {
    const by = answer.corners.map((corner, k) => distance(corner, corners[k as 0]));
    end(id, { kind: 'moved', by, corners: answer.corners });
    const followed = curved ? ({ kind: 'sides', through: answer.through } as const) : undefined;
    setCorners(id, { corners: answer.corners, followed }, curved ? words.followLabel : words.refineLabel);
    return;
  }
  if (answer.kind === 'not-refined') end(id, { ...answer, corners });
  else end(id, { kind: answer.kind === 'stopped' ? 'stopped' : 'failed', corners });
}

/** Finds the printed squares within the corners and squares up by all their crossings, as one step. */
export async function followSquares({ id }: Diagram, corners: Quad): Promise<void> {
  const { photo } = picturesOf(id);
  if (!photo) return;
  const { signal, onProgress } = begin(id, 'squares');
  const { key, file } = photo;
  const answer = await photoWork.call('findSquares', { key, file, corners }, { signal, onProgress });
  stops.delete(id);
  if (answer.kind === 'squares') {
    const outermost = cornersOfSquares(answer.map);
    end(id, undefined);
    say(words.squaresFound(answer.map));
    setCorners(id, { corners: outermost, followed: { kind: 'squares', map: answer.map } }, words.squaresLabel);
  } else if (answer.kind === 'no-grid') end(id, { ...answer, corners });
  else end(id, { kind: answer.kind === 'stopped' ? 'stopped' : 'failed', corners });
}

/** Gives the search up; the corners stay. */
export function stopCornerSearch(diagramId: string): void {
  stops.get(diagramId)?.abort();
}

/** What came of the last search, in words, as long as the corners are those it speaks of. */
export function outcomeWords({ outcome }: CornerSearch, corners: Quad): string | undefined {
  if (!outcome || !isSame(outcome.corners, corners)) return undefined;
  if (outcome.kind === 'moved') return words.moved(outcome.by);
  if (outcome.kind === 'no-grid') return words[outcome.why];
  if (outcome.kind !== 'not-refined') return words[outcome.kind];
  return outcome.side === undefined ? words['sides-do-not-meet'] : words.sideNotSeen(outcome.side);
}

function begin(id: string, what: 'find' | 'refine' | 'squares') {
  stops.get(id)?.abort();
  const stop = new AbortController();
  stops.set(id, stop);
  const onProgress = (share: number) => {
    const { outcome: _, ...before } = useSearches.getState()[id] ?? none;
    put(id, { ...before, running: { what, share } });
  };
  onProgress(0);
  return { signal: stop.signal, onProgress };
}

function end(id: string, outcome: Outcome | undefined): void {
  const { running: _, outcome: __, ...before } = useSearches.getState()[id] ?? none;
  const search = outcome ? { ...before, outcome } : before;
  put(id, search);
  if (outcome) say(outcomeWords(search, outcome.corners) ?? '');
}

function put(id: string, search: CornerSearch): void {
  useSearches.setState({ [id]: search });
}

function take(id: string, proposal: CornerProposal): void {
  const { corners } = proposal;
  setCorners(id, { corners, followed: followedIn(proposal) }, diagramWords.labels.corners);
}

function setCorners(
  id: string,
  { corners, followed }: { readonly corners: Quad; readonly followed: Followed | undefined },
  label: string,
): void {
  const found = useSearches.getState()[id]?.proposals;
  useDesk.setState({ showing: 'photo', corner: undefined });
  editDiagram(label, id, (now) => {
    if (now.squareUp.kind !== 'rectangle') return now;
    const { followed: _, ...rest } = now.squareUp;
    const seen = found && found.length > 0 ? { seen: seenIn(found) } : {};
    return { ...now, ...seen, squareUp: { ...rest, corners, ...(followed ? { followed } : {}) } };
  });
}

function isSame(a: Quad, b: Quad): boolean {
  return a.every(({ x, y }, k) => x === b[k as 0].x && y === b[k as 0].y);
}
