import { create } from 'zustand';
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
  readonly walk: Walk | undefined;
  open(page: GuidePage): void;
  close(): void;
  /** Begins, moves on or, with nothing, leaves the walk. It outlives a reload where the browser keeps anything. */
  setWalk(walk: Walk | undefined): void;
}

const KEY = 'walk';

export const useGuide = create<GuideState>((set) => ({
  page: undefined,
  walk: kept(),
  open: (page) => set({ page }),
  close: () => set({ page: undefined }),
  setWalk: (walk) => {
    try {
      if (walk) localStorage.setItem(KEY, JSON.stringify(walk));
      else localStorage.removeItem(KEY);
    } catch {
      // Storage is shut: it lasts as long as the page does.
    }
    set({ walk });
  },
}));

function kept(): Walk | undefined {
  try {
    const walk: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
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
