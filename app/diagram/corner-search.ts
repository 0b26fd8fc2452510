import { create } from 'zustand';
import type { Followed, Quad } from '../../core/garment/diagram';
import type { NotRefined } from '../../core/picture/corners-refined';
import type { NoGrid } from '../../core/picture/grid';
import { say } from '../ui/say';
import { diagramWords } from '../words/diagram';
import type { CornerProposal } from '../workers/photo-calls';
import { editDiagram } from './change-diagram';
import { useDesk } from './desk-store';
import { seenIn } from './found-sides';

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

/** What was proposed for the corners of a diagram, best first. */
export function proposalsFor(diagramId: string): readonly CornerProposal[] {
  return useSearches.getState()[diagramId]?.proposals ?? [];
}

const stops = new Map<string, AbortController>();

/** Gives the search up; the corners stay. */
export function stopCornerSearch(diagramId: string): void {
  stops.get(diagramId)?.abort();
}

/** What came of the last search, in words, as long as the corners are those it speaks of. */
export function outcomeWords({ outcome }: CornerSearch, corners: Quad): string | undefined {
  if (!outcome || !isSameQuad(outcome.corners, corners)) return undefined;
  if (outcome.kind === 'moved') return words.moved(outcome.by);
  if (outcome.kind === 'no-grid') return words[outcome.why];
  if (outcome.kind !== 'not-refined') return words[outcome.kind];
  return outcome.side === undefined ? words['sides-do-not-meet'] : words.sideNotSeen(outcome.side);
}

/** A search begins; one that runs already is given up. It must say when it is `done`. */
export function beginSearch(id: string, what: 'find' | 'refine' | 'squares') {
  stops.get(id)?.abort();
  const stop = new AbortController();
  stops.set(id, stop);
  const onProgress = (share: number) => {
    const { outcome: _, ...before } = useSearches.getState()[id] ?? none;
    putSearch(id, { ...before, running: { what, share } });
  };
  onProgress(0);
  const done = () => {
    if (stops.get(id) === stop) stops.delete(id);
  };
  return { signal: stop.signal, onProgress, done };
}

/** A search has ended, and what came of it is said aloud. */
export function endSearch(id: string, outcome: Outcome | undefined): void {
  const { running: _, outcome: __, ...before } = useSearches.getState()[id] ?? none;
  const search = outcome ? { ...before, outcome } : before;
  putSearch(id, search);
  if (outcome) say(outcomeWords(search, outcome.corners) ?? '');
}

/** Puts down where the search for the corners of a diagram stands. */
export function putSearch(id: string, search: CornerSearch): void {
  useSearches.setState({ [id]: search });
}

/** Squares up by other corners, and by what is followed between them, as one step. */
export function setCorners(
  id: string,
  { corners, followed }: { readonly corners: Quad; readonly followed: Followed | undefined },
  label: string,
): void {
  const found = proposalsFor(id);
  useDesk.setState({ showing: 'photo', corner: undefined });
  editDiagram(label, id, (now) => {
    if (now.squareUp.kind !== 'rectangle') return now;
    const { followed: _, ...rest } = now.squareUp;
    const seen = found.length > 0 ? { seen: seenIn(found) } : {};
    return { ...now, ...seen, squareUp: { ...rest, corners, ...(followed ? { followed } : {}) } };
  });
}

/** Whether four corners are the very same places as four others. */
export function isSameQuad(a: Quad, b: Quad): boolean {
  return a.every(({ x, y }, k) => x === b[k as 0].x && y === b[k as 0].y);
}
