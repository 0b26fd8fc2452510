import { beforeYouCut, type Finding } from '../../core/check/before-you-cut';
import { type LeftFinding, partKnowingly } from '../../core/check/left-knowingly';
import type { Garment } from '../../core/garment/garment';

/** Everything found, and parted into what is open and what is left knowingly. */
export interface LookedOver {
  readonly findings: readonly Finding[];
  readonly open: readonly Finding[];
  readonly left: readonly LeftFinding[];
}

/** Everything still open in a garment. With all its checks this is much to fetch, and is fetched when first needed. */
export function lookedOver(garment: Garment): LookedOver {
  const findings = beforeYouCut(garment);
  return { findings, ...partKnowingly(garment, findings) };
}
