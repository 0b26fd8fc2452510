import type { Garment, Ring } from './garment';
import { withOne } from './with-piece';

/** The garment with one more ring of pieces. */
export function addRing(garment: Garment, ring: Ring): Garment {
  return { ...garment, rings: [...garment.rings, ring] };
}

/** The garment with a piece taken into a ring, or left out of it. */
export function setInRing(garment: Garment, ringId: string, pieceId: string, member: 'in' | 'out'): Garment {
  return withRing(garment, ringId, (ring) => {
    const isIn = ring.members.some((one) => one.pieceId === pieceId);
    if (isIn === (member === 'in')) return ring;
    const members = isIn ? ring.members.filter((one) => one.pieceId !== pieceId) : [...ring.members, { pieceId }];
    return { ...ring, members };
  });
}

/** The garment with the drawn widths of a piece in a ring said, or left to its cut with `undefined`. */
export function setTimes(garment: Garment, ringId: string, pieceId: string, times: number | undefined): Garment {
  return withRing(garment, ringId, (ring) => {
    const index = ring.members.findIndex((member) => member.pieceId === pieceId);
    const member = ring.members[index];
    if (!member || member.times === times) return ring;
    return { ...ring, members: ring.members.with(index, times === undefined ? { pieceId } : { pieceId, times }) };
  });
}

/** The garment with another ease (mm, all the way round) wanted at a level of a ring. */
export function setEase(garment: Garment, ringId: string, levelId: string, ease: number): Garment {
  return withRing(garment, ringId, (ring) => {
    const levels = withOne(ring.levels, levelId, (level) => (level.ease === ease ? level : { ...level, ease }));
    return levels === ring.levels ? ring : { ...ring, levels };
  });
}

function withRing(garment: Garment, ringId: string, change: (ring: Ring) => Ring): Garment {
  const rings = withOne(garment.rings, ringId, change);
  return rings === garment.rings ? garment : { ...garment, rings };
}
