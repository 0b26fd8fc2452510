import type { Garment, HangsFrom, Level, Ring } from './garment';
import { withOne, withoutOne } from './with-piece';

/** The garment with one more ring of pieces. */
export function addRing(garment: Garment, ring: Ring): Garment {
  return { ...garment, rings: [...garment.rings, ring] };
}

/** The garment without a ring; its pieces stay. */
export function removeRing(garment: Garment, ringId: string): Garment {
  const rings = withoutOne(garment.rings, ringId);
  return rings === garment.rings ? garment : { ...garment, rings };
}

/** The garment with a ring called otherwise. */
export function renameRing(garment: Garment, ringId: string, name: string): Garment {
  return withRing(garment, ringId, (ring) => (ring.name === name ? ring : { ...ring, name }));
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
    const { times: _, ...bare } = member;
    return { ...ring, members: ring.members.with(index, times === undefined ? bare : { ...bare, times }) };
  });
}

/** The garment with the edge said that the levels of a piece in a ring are measured from, or its waist with `undefined`. */
export function setHangsFrom(garment: Garment, ringId: string, pieceId: string, from: HangsFrom | undefined): Garment {
  return withRing(garment, ringId, (ring) => {
    const index = ring.members.findIndex((member) => member.pieceId === pieceId);
    const member = ring.members[index];
    if (!member || (member.from?.edgeId === from?.edgeId && member.from?.depth === from?.depth)) return ring;
    const { from: _, ...bare } = member;
    return { ...ring, members: ring.members.with(index, from ? { ...bare, from } : bare) };
  });
}

/** The garment with one more level at which a ring is measured. */
export function addLevel(garment: Garment, ringId: string, level: Level): Garment {
  return withRing(garment, ringId, (ring) => ({ ...ring, levels: [...ring.levels, level] }));
}

/** The garment without a level of a ring. */
export function removeLevel(garment: Garment, ringId: string, levelId: string): Garment {
  return withLevels(garment, ringId, (levels) => withoutOne(levels, levelId));
}

/** The garment with a level called otherwise; by an empty name it goes by its girth again. */
export function renameLevel(garment: Garment, ringId: string, levelId: string, name: string): Garment {
  return withLevel(garment, ringId, levelId, (level) => {
    if ((level.name ?? '') === name) return level;
    const { name: _, ...bare } = level;
    return name === '' ? bare : { ...bare, name };
  });
}

/** The garment with another ease (mm, all the way round) wanted at a level of a ring. */
export function setEase(garment: Garment, ringId: string, levelId: string, ease: number): Garment {
  return withLevel(garment, ringId, levelId, (level) => (level.ease === ease ? level : { ...level, ease }));
}

/**
 * The garment with a level held against another girth or at another depth. A depth less than 0 lies above the waist, as
 * a bust level does.
 */
export function setLevelPlace(
  garment: Garment,
  ringId: string,
  levelId: string,
  place: Pick<Level, 'girth' | 'depth'>,
): Garment {
  return withLevel(garment, ringId, levelId, (level) => {
    const isSame = level.girth === place.girth && isSameDepth(level.depth, place.depth);
    return isSame ? level : { ...level, girth: place.girth, depth: place.depth };
  });
}

/** The garment with the body taped at this very level (mm, all the way round), or by the measure again with `undefined`. */
export function setLevelBody(garment: Garment, ringId: string, levelId: string, body: number | undefined): Garment {
  return withLevel(garment, ringId, levelId, (level) => {
    if (level.body === body) return level;
    const { body: _, ...bare } = level;
    return body === undefined ? bare : { ...bare, body };
  });
}

function isSameDepth(a: Level['depth'], b: Level['depth']): boolean {
  return a.kind === 'length'
    ? b.kind === 'length' && a.length === b.length
    : b.kind === 'measure' && a.measure === b.measure;
}

function withLevel(garment: Garment, ringId: string, levelId: string, change: (level: Level) => Level): Garment {
  return withLevels(garment, ringId, (levels) => withOne(levels, levelId, change));
}

function withLevels(garment: Garment, ringId: string, change: (levels: readonly Level[]) => readonly Level[]): Garment {
  return withRing(garment, ringId, (ring) => {
    const levels = change(ring.levels);
    return levels === ring.levels ? ring : { ...ring, levels };
  });
}

function withRing(garment: Garment, ringId: string, change: (ring: Ring) => Ring): Garment {
  const rings = withOne(garment.rings, ringId, change);
  return rings === garment.rings ? garment : { ...garment, rings };
}
