import { create } from 'zustand';
import type { NextStepName } from '../guide/next-step';
import type { HowToName } from '../guide/pages';

/** Where the book beside the rooms lies open. */
export type GuidePage = 'list' | 'words' | HowToName;

/** Which garment is walked through, and how far. */
export interface Walk {
  readonly garmentId: string;
  readonly step: number;
}

interface GuideState {
  readonly page: GuidePage | undefined;
  /** Whether the notebook says at its foot what comes next. */
  readonly saysNext: boolean;
  /** What is put off for each garment, by its id, while the page is open. */
  readonly later: Readonly<Record<string, readonly NextStepName[]>>;
  /** What the room is to bring into sight, and light up, as soon as it can. */
  readonly pointedAt: NextStepName | undefined;
  readonly walk: Walk | undefined;
  open(page: GuidePage): void;
  close(): void;
  setSaysNext(saysNext: boolean): void;
  /** Begins, moves on or, with nothing, leaves the walk. It outlives a reload where the browser keeps anything. */
  setWalk(walk: Walk | undefined): void;
}

const KEY = 'walk';
const NEXT_KEY = 'says-next';

export const useGuide = create<GuideState>((set) => ({
  page: undefined,
  walk: kept(),
  saysNext: read(NEXT_KEY) !== 'no',
  later: {},
  pointedAt: undefined,
  open: (page) => set({ page }),
  close: () => set({ page: undefined }),
  setSaysNext: (saysNext) => {
    keep(NEXT_KEY, saysNext ? undefined : 'no');
    set({ saysNext, later: {} });
  },
  setWalk: (walk) => {
    keep(KEY, walk && JSON.stringify(walk));
    set({ walk });
  },
}));

function keep(key: string, value: string | undefined): void {
  try {
    if (value !== undefined) localStorage.setItem(key, value);
    else localStorage.removeItem(key);
  } catch {
    // Storage is shut: it lasts as long as the page does.
  }
}

function read(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function kept(): Walk | undefined {
  try {
    const walk: unknown = JSON.parse(read(KEY) ?? 'null');
    return isWalk(walk) ? walk : undefined;
  } catch {
    return undefined;
  }
}

function isWalk(value: unknown): value is Walk {
  if (typeof value !== 'object' || value === null) return false;
  const { garmentId, step } = value as Record<string, unknown>;
  return typeof garmentId === 'string' && Number.isInteger(step) && (step as number) >= 0;
}
