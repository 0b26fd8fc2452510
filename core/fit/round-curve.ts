/** A reading at a place round the body: `at` is its share of the way round from centre front over the right side. */
export interface Reading {
  readonly at: number;
  readonly value: number;
}

/** Between readings: smoothly, or straight from one to the next as a draft shares a difference out gore by gore. */
export type Spread = 'smooth' | 'even';

/**
 * A value all the way round from readings at two or more places, as a function of the share of the way round. It goes
 * through every reading and never beyond its neighbours, and runs on where the round closes; `smooth` also bends nowhere
 * sharply (a monotone cubic; F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17, 1980; slopes by the harmonic mean
 * of Fritsch and J. Butland, 1984). One reading holds all round; `undefined` for none.
 */
export function roundCurve(readings: readonly Reading[], spread: Spread): ((at: number) => number) | undefined {
  const sorted = readings
    .map(({ at, value }) => ({ at: at - Math.floor(at), value }))
    .toSorted((a, b) => a.at - b.at)
    .filter((each, i, all) => each.at !== all[i - 1]?.at);
  const [first] = sorted;
  const count = sorted.length;
  if (!first) return undefined;
  if (count === 1) return () => first.value;
  const gap = (i: number) => {
    const [a, b] = [sorted[i] ?? first, sorted[(i + 1) % count] ?? first];
    const width = b.at - a.at + (i === count - 1 ? 1 : 0);
    return { width, slope: (b.value - a.value) / width };
  };
  const slopes = sorted.map((_, i) => slopeBetween(gap((i + count - 1) % count), gap(i)));
  return (place) => {
    const at = place - Math.floor(place);
    const found = sorted.findLastIndex((each) => each.at <= at);
    const i = found < 0 ? count - 1 : found;
    const [from, to] = [sorted[i] ?? first, sorted[(i + 1) % count] ?? first];
    const { width, slope } = gap(i);
    const past = at - from.at + (found < 0 ? 1 : 0);
    if (spread === 'even') return from.value + slope * past;
    const t = past / width;
    const [out, into] = [(slopes[i] ?? 0) * width, (slopes[(i + 1) % count] ?? 0) * width];
    // Hermite's cubic between the two readings with their slopes.
    const [square, cube] = [t * t, t * t * t];
    return (
      from.value * (2 * cube - 3 * square + 1) +
      out * (cube - 2 * square + t) +
      to.value * (3 * square - 2 * cube) +
      into * (cube - square)
    );
  };
}

interface Gap {
  readonly width: number;
  readonly slope: number;
}

/** The slope at a reading: flat at a highest or lowest one, else a mean that the steeper side cannot carry too far. */
function slopeBetween(before: Gap, after: Gap): number {
  if (before.slope * after.slope <= 0) return 0;
  const [w1, w2] = [2 * after.width + before.width, after.width + 2 * before.width];
  return (w1 + w2) / (w1 / before.slope + w2 / after.slope);
}
