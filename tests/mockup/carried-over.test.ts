import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garment } from '../../core/garment/garment';
import type { PinnedChange } from '../../core/garment/mockup';
import { mirrorPiece, movePiece, turnPiece } from '../../core/garment/move-piece';
import { outlineOf } from '../../core/garment/outline';
import { pieceOf, withPiece } from '../../core/garment/with-piece';
import { pathAtLength } from '../../core/geometry/path';
import { cross, distance, dot, vectorBetween } from '../../core/geometry/point';
import { type CarryWish, carriedOver } from '../../core/mockup/carried-over';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { leftAndRight } from '../../core/shaping/half-pieces';
import { lengthOf, movedIn, pathOf } from './moved';
import { back, edges, front, frontSeam, gore, pinned, sideSeam, skirt, withMockup } from './three-panels';

const date = '2026-03-11';

function tried(garment: Garment, more: Partial<CarryWish> = {}, base: Garment | undefined = skirt) {
  const pinnedIds =
    garment.mockups?.[0]?.pinned.filter(({ state }) => state.kind === 'noted').map(({ id }) => id) ?? [];
  return carriedOver(garment, { mockupId: 'm1', pinnedIds, date, base, ...more });
}

function carried(changes: readonly PinnedChange[], garment: Garment = skirt, base: Garment = skirt) {
  const made = tried(withMockup(garment, changes), {}, base);
  if (made.kind !== 'carried') throw new Error(made.why);
  return made;
}

const differs = (garment: Garment, seam: typeof frontSeam) => walkOfSeam(garment, seam)?.difference ?? Number.NaN;

describe('carriedOver: an edge', () => {
  it('moves both edges by their shares square to the old line, whatever the pins, and the seam stays as true as it was', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 80, max: 620, noNaN: true }),
        fc.double({ min: -14, max: 14, noNaN: true }).filter((by) => Math.abs(by) > 0.2),
        fc.constantFrom(0, 0.3, 0.5, 1),
        (along, by, share) => {
          const what = { kind: 'edge', edge: edges.front, pins: [{ along, by }], share } as const;
          const { garment } = carried([pinned('p', what)]);
          const across = lengthOf(skirt, edges.goreFront) * (1 - along / lengthOf(skirt, edges.front));
          expect(Math.abs(movedIn(skirt, garment, edges.front, along) - by * share)).toBeLessThan(0.1);
          expect(Math.abs(movedIn(skirt, garment, edges.goreFront, across) - by * (1 - share))).toBeLessThan(0.1);
          expect(Math.abs(differs(garment, frontSeam) - differs(skirt, frontSeam))).toBeLessThan(0.51);
          expect(pieceOf(garment, back.id)).toBe(back);
        },
      ),
      { seed: 11, numRuns: 40 },
    );
  });

  it('lets a corner of the partner give where a pinned corner moves the two sides differently', () => {
    const what = { kind: 'edge', edge: edges.front, pins: [{ along: 0, by: 16 }], to: 190, share: 1 } as const;
    const { garment } = carried([pinned('p', what)]);
    const grown = lengthOf(garment, edges.front) - lengthOf(skirt, edges.front);
    expect(Math.abs(grown)).toBeGreaterThan(1);
    expect(lengthOf(garment, edges.goreFront) - lengthOf(skirt, edges.goreFront)).toBeCloseTo(grown, 3);
    const { point, tangent } = pathAtLength(pathOf(skirt, edges.front), 0);
    const pinnedCorner = pieceOf(garment, front.id)?.corners[1]?.at ?? point;
    expect(Math.abs(cross(tangent, vectorBetween(point, pinnedCorner)))).toBeCloseTo(16, 6);
    // The partner's corner gave straight on along its own edge, so nothing was taken in there.
    const corner = pieceOf(garment, gore.id)?.corners[0]?.at ?? point;
    const end = pathAtLength(pathOf(skirt, edges.goreFront), lengthOf(skirt, edges.goreFront));
    expect(cross(end.tangent, vectorBetween(end.point, corner))).toBeCloseTo(0, 9);
    expect(dot(end.tangent, vectorBetween(end.point, corner))).toBeGreaterThan(1);
  });

  it('gives all of it to an edge that is sewn to nothing', () => {
    const edge = { pieceId: back.id, edgeId: back.edges[1]?.id ?? '' };
    const { garment } = carried([pinned('p', { kind: 'edge', edge, pins: [{ along: 330, by: 9 }], share: 0.5 })]);
    expect(movedIn(skirt, garment, edge, 330)).toBeCloseTo(9, 1);
  });

  it('takes a pin a thumb’s breadth from the end for the end itself', () => {
    const at = (along: number) =>
      carried([pinned('p', { kind: 'edge', edge: edges.goreBack, pins: [{ along, by: 8 }], to: 200, share: 0.5 })])
        .garment;
    expect(at(5).pieces).toEqual(at(0).pieces);
  });

  it('is one and the same on pieces that lie moved, turned or mirrored on the table', () => {
    const what = {
      kind: 'edge',
      edge: edges.goreFront,
      pins: [
        { along: 250, by: 7 },
        { along: 370, by: 11 },
      ],
      from: 160,
      to: 500,
      share: 0.4,
    } as const;
    const straight = carried([pinned('p', what)]).garment;
    const laid = withPiece(
      withPiece(skirt, gore.id, (piece) => turnPiece(movePiece(piece, { dx: 70, dy: -30 }), { x: 11, y: 7 }, 0.6)),
      front.id,
      (piece) => mirrorPiece(piece, { x: 0, y: 0 }, { x: 3, y: 9 }),
    );
    const other = carried([pinned('p', what)], laid).garment;
    for (const edge of [edges.front, edges.goreFront]) {
      expect(lengthOf(other, edge)).toBeCloseTo(lengthOf(straight, edge), 6);
    }
    expect(movedIn(laid, other, edges.goreFront, 370)).toBeCloseTo(4.4, 2);
  });

  it('refuses what fades among its pins, what lies on a fold, what is gone and what is settled', () => {
    const what = { kind: 'edge', edge: edges.front, pins: [{ along: 210, by: 9 }], share: 0.5 } as const;
    const why = (change: PinnedChange) => {
      const made = tried(withMockup(skirt, [change]));
      return made.kind === 'not-carried' ? made.why : made.kind;
    };
    expect(why(pinned('p', { ...what, from: 230 }))).toBe('fades-inside');
    expect(why(pinned('p', { ...what, edge: { pieceId: front.id, edgeId: front.edges[3]?.id ?? '' } }))).toBe(
      'on-a-fold',
    );
    expect(why(pinned('p', { ...what, edge: { pieceId: front.id, edgeId: 'gone' } }))).toBe('edge-gone');
    expect(why(pinned('p', { ...what, pins: [] }))).toBe('no-pins');
    const done = withMockup(skirt, [pinned('p', what, { state: { kind: 'carried', date } })]);
    expect(tried(done, { pinnedIds: ['p'] })).toMatchObject({ kind: 'not-carried', pinnedId: 'p', why: 'not-noted' });
  });
});

describe('carriedOver: places stay those of the version', () => {
  const deep = pinned('deep', {
    kind: 'edge',
    edge: edges.goreBack,
    pins: [{ along: 480, by: 10 }],
    from: 380,
    to: 580,
    share: 0.5,
  });
  const longer = pinned('longer', {
    kind: 'length',
    pieceIds: [front.id, gore.id, back.id],
    at: { kind: 'depth', depth: 250 },
    by: 40,
  });

  it('a pin below a line that was let in since lies lower by as much, at once or later', () => {
    const atOnce = carried([longer, deep]).garment;
    const first = tried(withMockup(skirt, [longer, deep]), { pinnedIds: ['longer'] });
    if (first.kind !== 'carried') throw new Error(first.why);
    const later = tried(first.garment, { pinnedIds: ['deep'] });
    if (later.kind !== 'carried') throw new Error(later.why);
    expect(later.notes).toEqual([]);
    const only = carried([longer]).garment;
    const lower = 480 + lengthOf(only, edges.goreBack) - lengthOf(skirt, edges.goreBack);
    for (const garment of [atOnce, later.garment]) {
      expect(movedIn(only, garment, edges.goreBack, lower)).toBeCloseTo(5, 1);
      expect(Math.abs(movedIn(only, garment, edges.goreBack, lower - 100))).toBeLessThan(0.1);
    }
  });

  it('moves places in proportion and says so where the edge was changed otherwise, and refuses another edge', () => {
    const stretched = (by: number) =>
      withPiece(skirt, gore.id, (piece) => ({
        ...piece,
        corners: piece.corners.map((corner, i) =>
          i === 2 || i === 3 ? { ...corner, at: { ...corner.at, y: corner.at.y + by } } : corner,
        ),
      }));
    const made = carried([deep], stretched(60));
    expect(made.notes[0]).toMatchObject({ kind: 'places-scaled', edge: edges.goreBack });
    expect(tried(withMockup(stretched(300), [deep]))).toMatchObject({ why: 'edge-changed', pinnedId: 'deep' });
  });

  it('without the version counts along the edge as it is, and says so', () => {
    const made = carriedOver(withMockup(skirt, [deep]), { mockupId: 'm1', pinnedIds: ['deep'], date, base: undefined });
    expect(made).toMatchObject({ kind: 'carried', notes: [{ kind: 'version-gone', pinnedId: 'deep' }] });
  });

  it('leaves none of its own marks behind', () => {
    expect(carried([longer, deep]).garment.pieces.flatMap(({ notches }) => notches)).toEqual([]);
  });
});

describe('carriedOver: longer, shorter, and a point moved', () => {
  const all = [front.id, gore.id, back.id];

  it('lengthens every panel at its hem and keeps the seams', () => {
    const { garment } = carried([pinned('p', { kind: 'length', pieceIds: all, at: { kind: 'hem' }, by: 23 })]);
    for (const edge of [edges.front, edges.goreFront, edges.goreBack, edges.back]) {
      expect(lengthOf(garment, edge) - lengthOf(skirt, edge)).toBeCloseTo(23, 1);
    }
  });

  it('shortened across the ring by as much as it was lengthened it is as it was', () => {
    const at = { kind: 'depth', depth: 310 } as const;
    const there = carried([pinned('p', { kind: 'length', pieceIds: all, at, by: 27 })]).garment;
    const again = carried([pinned('q', { kind: 'length', pieceIds: all, at, by: -27 })], {
      ...there,
      mockups: [],
    }).garment;
    for (const seam of [frontSeam, sideSeam]) {
      expect(Math.abs(differs(there, seam) - differs(skirt, seam))).toBeLessThan(0.51);
    }
    expect(lengthOf(again, edges.back)).toBeCloseTo(lengthOf(skirt, edges.back), 1);
  });

  it('moves a corner, and the corner it is sewn to gives so that the seam stays true', () => {
    const cornerId = gore.corners[1]?.id ?? '';
    const { garment } = carried([pinned('p', { kind: 'point', pieceId: gore.id, cornerId, by: { dx: -3, dy: -8 } })]);
    const now = pieceOf(garment, gore.id)?.corners[1]?.at ?? { x: 0, y: 0 };
    expect(vectorBetween({ x: 560, y: 0 }, now)).toEqual({ dx: -3, dy: -8 });
    expect(differs(garment, sideSeam)).toBeCloseTo(differs(skirt, sideSeam), 3);
    expect(lengthOf(garment, edges.back)).toBeGreaterThan(lengthOf(skirt, edges.back) + 5);
    expect(pieceOf(garment, front.id)).toBe(front);
  });

  it('follows a piece that lies turned and mirrored since', () => {
    const cornerId = gore.corners[2]?.id ?? '';
    const change = pinned('p', { kind: 'point', pieceId: gore.id, cornerId, by: { dx: 6, dy: 4 } });
    const laid = withPiece(skirt, gore.id, (piece) =>
      turnPiece(mirrorPiece(piece, { x: 500, y: 0 }, { x: 500, y: 1 }), { x: 90, y: 40 }, 1.1),
    );
    const [one, other] = [carried([change]).garment, carried([change], laid).garment];
    expect(lengthOf(other, edges.goreBack)).toBeCloseTo(lengthOf(one, edges.goreBack), 6);
  });

  it('leaves a corner on the fold where it is', () => {
    const cornerId = front.corners[0]?.id ?? '';
    const noted = withMockup(skirt, [
      pinned('p', { kind: 'point', pieceId: front.id, cornerId, by: { dx: 5, dy: 0 } }),
    ]);
    expect(tried(noted)).toMatchObject({ why: 'on-a-fold', pieceId: front.id });
  });
});

describe('carriedOver: for one side of the body', () => {
  const left = pinned(
    'p',
    { kind: 'edge', edge: edges.goreBack, pins: [{ along: 260, by: 12 }], share: 0.5 },
    { side: 'left' },
  );
  let count = 0;
  const wish = { newId: () => `n${++count}`, names: { left: 'left', right: 'right' } };
  const apart = (pieceId: string, garment: Garment): Garment => {
    const made = leftAndRight(garment, pieceId, wish);
    if ('why' in made) throw new Error(made.why);
    return made;
  };
  const bothApart = apart(back.id, apart(gore.id, skirt));

  it('refuses while its piece, or the one it is sewn to, is cut for both', () => {
    expect(tried(withMockup(skirt, [left]))).toMatchObject({ why: 'sides-together', pieceIds: [gore.id] });
    expect(tried(withMockup(apart(gore.id, skirt), [left]))).toMatchObject({
      why: 'sides-together',
      pieceIds: [back.id],
    });
  });

  it('goes to the twin on that side, the drawn one being the right, and to its partner there', () => {
    const { garment } = carried([left], bothApart);
    const changed = garment.pieces.filter((piece) => !bothApart.pieces.includes(piece));
    expect(changed.map(({ side }) => side)).toEqual(['left', 'left']);
    const twin = changed[0];
    const was = bothApart.pieces.find(({ id }) => id === twin?.id);
    if (!twin || !was) throw new Error('no twin');
    const edge = { pieceId: twin.id, edgeId: twin.edges[1]?.id ?? '' };
    expect(movedIn(bothApart, garment, edge, 260)).toBeCloseTo(6, 1);
  });

  it('meant for both goes to both sides where they are apart', () => {
    const { garment } = carried([{ ...left, side: 'both' }], bothApart);
    expect(garment.pieces.filter((piece) => !bothApart.pieces.includes(piece)).map(({ side }) => side)).toEqual([
      'right',
      'left',
      'right',
      'left',
    ]);
  });

  it('on a piece opened at its fold changes both halves alike, or for one side the half that was drawn, and says so', () => {
    const what = {
      kind: 'edge',
      edge: { pieceId: front.id, edgeId: front.edges[1]?.id ?? '' },
      pins: [{ along: 200, by: 9 }],
      share: 1,
    } as const;
    const opened = apart(gore.id, apart(front.id, skirt));
    const { garment } = carried([pinned('p', what)], opened);
    const paths = outlineOf(pieceOf(garment, front.id) ?? front).edges;
    const old = outlineOf(pieceOf(opened, front.id) ?? front).edges;
    const moved = paths.map((path, i) =>
      distance(pathAtLength(path, 200).point, pathAtLength(old[i] ?? path, 200).point),
    );
    expect(moved.filter((by) => by > 3)).toHaveLength(2);
    const one = tried(withMockup(opened, [pinned('p', what, { side: 'right' })]));
    expect(one).toMatchObject({ kind: 'carried', notes: [{ kind: 'half-as-drawn', pieceId: front.id }] });
  });
});

it('drawn apart one after another, what is for one side is sewn to what is for that side', () => {
  let count = 0;
  const wish = { newId: () => `s${++count}`, names: { left: 'left', right: 'right' } };
  const once = leftAndRight(skirt, gore.id, wish);
  const twice = 'why' in once ? once : leftAndRight(once, back.id, wish);
  if ('why' in twice) throw new Error(twice.why);
  const sideOf = (pieceId: string) => pieceOf(twice, pieceId)?.side;
  const sewn = (twice.seams ?? []).map(({ one, other }) => [
    sideOf(one[0]?.pieceId ?? ''),
    sideOf(other[0]?.pieceId ?? ''),
  ]);
  expect(sewn).toEqual([
    [undefined, 'right'],
    [undefined, 'left'],
    ['right', 'right'],
    ['left', 'left'],
  ]);
});
