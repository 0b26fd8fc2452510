import { describe, expect, it } from 'vitest';
import { differencesOf } from '../../core/compare/differences';
import { laidOver } from '../../core/compare/laid-over';
import type { Garment } from '../../core/garment/garment';
import { garmentOfVersion, nextVersion, versionNow } from '../../core/garment/version';
import { pieceOf } from '../../core/garment/with-piece';
import { carriedOver } from '../../core/mockup/carried-over';
import { mockupFindings } from '../../core/mockup/mockup-findings';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { lengthOf, movedIn } from './moved';
import { back, edges, front, frontSeam, gore, pinned, sideSeam, skirt, withMockup } from './three-panels';

const date = '2026-03-11';
const length = { front: lengthOf(skirt, edges.front), back: lengthOf(skirt, edges.back) };

/** Five changes, noted from both sides of either seam: in the middle, at a waist corner, let out, in two pins, near the hem. */
const changes = [
  pinned('p1', { kind: 'edge', edge: edges.front, pins: [{ along: 130, by: 11 }], from: 40, to: 230, share: 0.5 }),
  pinned('p2', {
    kind: 'edge',
    edge: edges.back,
    pins: [{ along: length.back, by: 9 }],
    from: length.back - 170,
    share: 0.5,
  }),
  pinned('p3', { kind: 'edge', edge: edges.goreFront, pins: [{ along: 300, by: -7 }], from: 210, to: 390, share: 0.7 }),
  pinned('p4', {
    kind: 'edge',
    edge: edges.goreBack,
    pins: [
      { along: 260, by: 6 },
      { along: 330, by: 13 },
    ],
    from: 190,
    to: 420,
    share: 0.5,
  }),
  pinned('p5', { kind: 'edge', edge: edges.front, pins: [{ along: 560, by: 5 }], from: 490, to: 640, share: 0.4 }),
];

/** Each pin on each of the two edges it moves: how far along the old edge, and its share of it. */
const expected = (() => {
  const acrossFront = (along: number) => lengthOf(skirt, edges.goreFront) * (1 - along / length.front);
  const acrossGoreFront = (along: number) => length.front * (1 - along / lengthOf(skirt, edges.goreFront));
  const acrossGoreBack = (along: number) => length.back * (1 - along / lengthOf(skirt, edges.goreBack));
  return [
    ['front', 130, 5.5],
    ['goreFront', acrossFront(130), 5.5],
    ['back', length.back, 4.5],
    ['goreBack', 0, 4.5],
    ['goreFront', 300, -4.9],
    ['front', acrossGoreFront(300), -2.1],
    ['goreBack', 260, 3],
    ['back', acrossGoreBack(260), 3],
    ['goreBack', 330, 6.5],
    ['back', acrossGoreBack(330), 6.5],
    ['front', 560, 2],
    ['goreFront', acrossFront(560), 3],
  ] as const;
})();

function carried(garment: Garment, base: Garment, pinnedIds: readonly string[]): Garment {
  const made = carriedOver(garment, { mockupId: 'm1', pinnedIds, date, base });
  if (made.kind !== 'carried') throw new Error(made.why);
  expect(made.notes).toEqual([]);
  return made.garment;
}

describe('a whole history: draft, mock-up, five pinned changes, carry over, compare', () => {
  const version = nextVersion(skirt, { name: 'as drafted', made: '2026-03-09', note: '' }, undefined);
  const noted = withMockup(skirt, changes);
  const base = garmentOfVersion([version], 1) as Garment;
  const ids = changes.map(({ id }) => id);
  const atOnce = carried(noted, base, ids);
  const oneByOne = ids.reduce((so, id) => carried(so, base, [id]), noted);

  it('begins with a seam that agrees, and holds back cutting until all is settled', () => {
    expect(Math.abs(walkOfSeam(skirt, frontSeam)?.difference ?? 9)).toBeLessThan(1.5);
    expect(mockupFindings(noted)[0]).toMatchObject({ kind: 'pinned-not-carried', weight: 'stop', pinned: changes });
    expect(mockupFindings(atOnce)).toEqual([]);
    expect(atOnce.mockups?.[0]?.pinned.map(({ state }) => state)).toEqual(ids.map(() => ({ kind: 'carried', date })));
    expect(versionNow([version], noted)?.number).toBe(1);
    expect(versionNow([version], atOnce)).toBeUndefined();
  });

  describe.each([
    ['all at once', atOnce],
    ['one by one', oneByOne],
  ])('carried over %s', (_, after) => {
    it.each(expected)('%s, %f mm along, has moved by its share, %f mm, to a tenth', (name, along, by) => {
      expect(Math.abs(movedIn(base, after, edges[name], along) - by)).toBeLessThan(0.1);
    });

    it('has not moved where every change has faded, to a tenth', () => {
      const still = {
        front: [15, 260, 483, 660],
        goreFront: [20, 36, 203, 425, 452, 665],
        goreBack: [180, 450, 600],
        back: [80, 230, 515],
      };
      for (const [name, places] of Object.entries(still)) {
        for (const along of places) {
          expect(Math.abs(movedIn(base, after, edges[name as keyof typeof edges], along))).toBeLessThan(0.1);
        }
      }
    });

    it('keeps both seams as true as they were', () => {
      for (const seam of [frontSeam, sideSeam]) {
        const [was, is] = [walkOfSeam(base, seam), walkOfSeam(after, seam)];
        expect(is?.agrees).toBe(true);
        expect(Math.abs((is?.difference ?? 9) - (was?.difference ?? 0))).toBeLessThan(0.5);
      }
    });

    it('moved nothing else: of all corners only the two at the pinned waist, of all edges only the four and their waists', () => {
      const moved = base.pieces.flatMap((piece) =>
        piece.corners.filter(({ id, at }) => {
          const now = pieceOf(after, piece.id)?.corners.find((corner) => corner.id === id)?.at;
          return now?.x !== at.x || now.y !== at.y;
        }),
      );
      expect(moved.map(({ id }) => id)).toEqual([gore.corners[1]?.id, back.corners[0]?.id]);
      for (const [piece, index] of [
        [front, 0],
        [front, 2],
        [front, 3],
        [gore, 2],
        [back, 1],
        [back, 2],
      ] as const) {
        const edge = { pieceId: piece.id, edgeId: piece.edges[index]?.id ?? '' };
        expect(lengthOf(after, edge)).toBe(lengthOf(base, edge));
      }
      expect(
        after.pieces.map(({ notches, darts, grain, cut, edges }) => [
          notches,
          darts,
          grain,
          cut,
          edges.map((e) => e.allowance),
        ]),
      ).toEqual(
        base.pieces.map(({ notches, darts, grain, cut, edges }) => [
          notches,
          darts,
          grain,
          cut,
          edges.map((e) => e.allowance),
        ]),
      );
      expect(after.seams).toEqual(base.seams);
    });

    it.each([
      ['front', front.id, 5.5],
      ['gore', gore.id, 6.5],
      ['back', back.id, 6.5],
    ])('laid over the version, %s differs most by the largest share pinned on it', (_name, pieceId, most) => {
      const [was, is] = [pieceOf(base, pieceId), pieceOf(after, pieceId)];
      if (!was || !is) throw new Error('no piece');
      const motion = laidOver(was, is, { kind: 'as-they-lie' });
      const { gap, edges: pairs } = differencesOf(was, is, motion ?? { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 }, []);
      expect(Math.abs(gap.width - most)).toBeLessThan(0.1);
      expect(pairs.every(({ one, other }) => one && other)).toBe(true);
    });
  });

  it('comes to the same one by one, to a tenth', () => {
    for (const name of Object.keys(edges) as (keyof typeof edges)[]) {
      for (let along = 20; along < 680; along += 33) {
        expect(Math.abs(movedIn(atOnce, oneByOne, edges[name], along))).toBeLessThan(0.1);
      }
    }
  });
});
