import { useState } from 'react';
import { keepTicks, keptTicks } from './kept-ticks';

export interface TicksInHand {
  readonly has: (key: string) => boolean;
  readonly count: number;
  /** How many were set while the piece was otherwise; they hold no more. */
  readonly lost: number;
  readonly set: (key: string, isDone: boolean) => void;
  readonly clear: () => void;
}

/** The ticks of a piece with this mark, kept on the device at once. */
export function useTicks(garmentId: string, pieceId: string, mark: string): TicksInHand {
  const [{ done, lost }, setState] = useState(() => {
    const kept = keptTicks(garmentId, pieceId);
    if (!kept) return { done: [] as readonly string[], lost: 0 };
    return kept.mark === mark ? { done: kept.done, lost: 0 } : { done: [], lost: kept.done.length };
  });
  const keep = (now: readonly string[]) => {
    setState({ done: now, lost: 0 });
    keepTicks({ garmentId, pieceId, mark, done: now });
  };
  return {
    has: (key) => done.includes(key),
    count: done.length,
    lost,
    set: (key, isDone) =>
      keep(isDone ? [...done.filter((one) => one !== key), key] : done.filter((one) => one !== key)),
    clear: () => keep([]),
  };
}
