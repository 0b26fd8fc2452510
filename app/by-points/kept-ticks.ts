/**
 * Which points of a piece are drawn already: no part of the garment, but lost work if a phone falls asleep on the floor.
 * The browser's small store is enough, and forgetting it does no harm.
 */
const KEY = 'inchsquare points drawn';

/** More pieces than this are not remembered; the oldest goes. */
const MOST = 40;

export interface Ticks {
  readonly garmentId: string;
  readonly pieceId: string;
  /** The mark of the piece the points were drawn from. */
  readonly mark: string;
  readonly done: readonly string[];
}

export function keptTicks(garmentId: string, pieceId: string): Ticks | undefined {
  return all().find((ticks) => ticks.garmentId === garmentId && ticks.pieceId === pieceId);
}

export function keepTicks(ticks: Ticks): void {
  const others = all().filter(({ garmentId, pieceId }) => garmentId !== ticks.garmentId || pieceId !== ticks.pieceId);
  const kept = ticks.done.length > 0 ? [...others, ticks] : others;
  try {
    localStorage.setItem(KEY, JSON.stringify(kept.slice(-MOST)));
  } catch {
    // Ticks that cannot be kept still hold until the page is left.
  }
}

function all(): readonly Ticks[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return Array.isArray(kept) ? kept.filter(isTicks) : [];
  } catch {
    return [];
  }
}

function isTicks(value: unknown): value is Ticks {
  const ticks = value as Partial<Ticks> | null;
  return (
    typeof ticks?.garmentId === 'string' &&
    typeof ticks.pieceId === 'string' &&
    typeof ticks.mark === 'string' &&
    Array.isArray(ticks.done) &&
    ticks.done.every((key) => typeof key === 'string')
  );
}
