import { beforeYouCut } from '../../core/check/before-you-cut';
import { partKnowingly } from '../../core/check/left-knowingly';
import type { Garment } from '../../core/garment/garment';
import type { LookedOver } from './findings-store';

/** Everything still open in a garment. With all its checks this is much to fetch, and is fetched when first needed. */
export function lookedOver(garment: Garment): LookedOver {
  const findings = beforeYouCut(garment);
  return { findings, ...partKnowingly(garment, findings) };
}
