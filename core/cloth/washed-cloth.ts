import type { Point } from '../geometry/point';
import type { Cloth } from './cloth';
import { afterShrinking, type Shrinkage } from './shrinkage';

/** A cloth as it is after washing, when it is laid: narrower, shorter, and every place on it drawn together. */
export function washedCloth(cloth: Cloth, { along, across }: Shrinkage): Cloth {
  const long = (length: number) => afterShrinking(length, along);
  const wide = (length: number) => afterShrinking(length, across);
  const place = ({ x, y }: Point) => ({ x: long(x), y: wide(y) });
  return {
    ...cloth,
    width: wide(cloth.width),
    selvedge: wide(cloth.selvedge),
    ...(cloth.atHand === undefined ? {} : { atHand: long(cloth.atHand) }),
    ...(cloth.repeat ? { repeat: { along: long(cloth.repeat.along), across: wide(cloth.repeat.across) } } : {}),
    flaws: cloth.flaws.map((flaw) => flaw.map(place)),
    ...(cloth.shape ? { shape: cloth.shape.map(place) } : {}),
  };
}
