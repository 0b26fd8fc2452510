import { describe, expect, it } from 'vitest';
import { lindenGarment } from '../../app/demo/linden-garment';
import { clothFindings } from '../../core/check/cloth-findings';
import { pointsToBeSureOf } from '../../core/check/points-to-be-sure-of';
import { changedSince, keptLay, layingOf, pinnedOf } from '../../core/cloth/garment-laying';
import { movedTo, pinnedPlace, turned } from '../../core/cloth/lay-by-hand';
import { laidFor } from '../../core/cloth/lay-search';
import { layStanding } from '../../core/cloth/lay-standing';
import { seededRandom } from '../../core/cloth/seeded-random';
import { joinForWidth, stripInLengths, waysOut } from '../../core/cloth/ways-out';
import { addCloth, changeCloth, keepLay, removeCloth } from '../../core/garment/cloth-edits';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { movePiece } from '../../core/garment/move-piece';
import { readGarment } from '../../core/garment/schema';
import { inches } from '../../core/units/inch';
import { writeMetres, writeYards } from '../../core/units/write-yards';

const CLOTH: GarmentCloth = {
  id: 'cloth',
  name: 'Lawn',
  width: inches(39),
  selvedge: inches(0.5),
  atHand: inches(90),
  folded: 'lengthwise',
  nap: 'none',
  flaws: [],
  strips: [{ id: 'placket', name: 'Placket', length: inches(20), width: inches(3), count: 1, cut: 'along' }],
  grain: 'straight',
};

function demo(cloth: GarmentCloth = CLOTH): Garment {
  let count = 0;
  const garment = lindenGarment({ newId: () => `id${count++}`, today: '2026-01-07', photoId: 'photo' });
  return addCloth({ ...garment, cloths: [] }, cloth);
}

function laid(garment: Garment, cloth: GarmentCloth = CLOTH): Garment {
  const { made } = layingOf(garment, cloth);
  if (made.kind !== 'task') throw new Error('the demo can be laid');
  const lay = laidFor(made.task, { steps: 20, random: seededRandom(1) });
  if (!lay) throw new Error('there is a lay');
  return keepLay(garment, keptLay(cloth.id, made.task, lay, { made: '2026-01-08', version: 3, pinned: [] }));
}

describe('a lay kept with the garment', () => {
  it('is read again as it was, and takes two panels of 30 1/2 in on one fold', () => {
    const garment = laid(demo());
    expect(readGarment(JSON.parse(JSON.stringify(garment)))).toMatchObject({ kind: 'garment', garment });
    const standing = layStanding(garment, CLOTH);
    expect(standing?.needed).toBeCloseTo(inches(61), 0);
    expect(standing?.faults).toEqual([]);
    expect(standing?.atHand).toMatchObject({ kind: 'enough' });
  });

  it('is out of date when a piece is cut otherwise, and not when it only lies elsewhere on the table', () => {
    const garment = laid(demo());
    const [panel] = garment.pieces;
    const moved = { ...garment, pieces: garment.pieces.map((piece) => movePiece(piece, { dx: 17.3, dy: -4.9 })) };
    expect(clothFindings(moved)).toEqual([]);
    const wider = {
      ...garment,
      pieces: garment.pieces.map((piece) => ({
        ...piece,
        edges: piece.edges.map((edge) => ({ ...edge, allowance: 30 })),
      })),
    };
    expect(clothFindings(wider)).toMatchObject([{ kind: 'lay-stale', weight: 'warn', cloth: false, ids: [panel?.id] }]);
    const narrower = changeCloth(garment, 'cloth', (cloth) => ({ ...cloth, width: inches(38) }));
    expect(clothFindings(narrower)).toMatchObject([{ kind: 'lay-stale', cloth: true, ids: [] }]);
  });

  it('holds back cutting where cloth runs short or pieces overlap, and goes with its cloth', () => {
    const short = changeCloth(laid(demo()), 'cloth', (cloth) => ({ ...cloth, atHand: inches(58) }));
    const [finding] = clothFindings(short);
    expect(finding).toMatchObject({ kind: 'cloth-short', weight: 'stop' });
    expect(finding?.kind === 'cloth-short' && finding.short).toBeCloseTo(inches(3), 0);
    const garment = laid(demo());
    const { made } = layingOf(garment, CLOTH);
    const lay = garment.lays?.[0];
    if (made.kind !== 'task' || !lay) throw new Error('laid');
    const first = lay.placed[0];
    const other = lay.placed.find(({ id, copy }) => id === first?.id && copy !== first?.copy);
    if (!first || !other) throw new Error('two panels');
    const over = keepLay(garment, movedTo(made.task, lay, first, { x: other.at.x + 50, y: 0 }));
    expect(clothFindings(over)).toMatchObject([{ kind: 'lay-overlaps', count: 1 }]);
    expect(removeCloth(over, 'cloth')).toMatchObject({ cloths: [], lays: [] });
  });

  it('is a point to be sure of: not looked at, settled, open', () => {
    const state = (garment: Garment) => pointsToBeSureOf(garment).find(({ name }) => name === 'lay-made')?.state;
    expect(state(demo())).toBe('not-looked-at');
    expect(state(laid(demo()))).toBe('settled');
    expect(state(changeCloth(laid(demo()), 'cloth', (cloth) => ({ ...cloth, atHand: inches(40) })))).toBe('open');
  });
});

describe('a lay changed by hand', () => {
  it('keeps a fold piece on the fold, counts its new length, and remembers its pins', () => {
    const garment = laid(demo());
    const { made } = layingOf(garment, CLOTH);
    const lay = garment.lays?.[0];
    const first = lay?.placed.find(({ id }) => id === garment.pieces[0]?.id);
    if (made.kind !== 'task' || !lay || !first) throw new Error('laid');
    const moved = movedTo(made.task, lay, first, { x: inches(50), y: 33 });
    const place = moved.placed.find(({ id, copy }) => id === first.id && copy === first.copy);
    expect(place?.at).toEqual({ x: inches(50), y: 0 });
    expect(moved.length).toBeCloseTo(inches(80.5), 0);
    const pinned = pinnedPlace(moved, first, 'pinned');
    expect(pinnedOf(pinned)).toEqual([{ id: first.id, copy: first.copy, stance: first.stance, at: place?.at }]);
    expect(pinnedOf(pinnedPlace(pinned, first, 'free'))).toEqual([]);
    expect(
      turned(made.task, moved, first).placed.find(({ id, copy }) => id === first.id && copy === first.copy),
    ).toMatchObject({
      stance: (first.stance + 1) % 2,
      at: { y: 0 },
    });
    expect(changedSince(moved, made.task)).toBeUndefined();
  });
});

describe('waysOut', () => {
  it('says what would do where the bias is too wide for the cloth, and where a piece may be joined', () => {
    const narrow = { ...CLOTH, width: inches(36), grain: 'bias' as const };
    const { from, cloth, choice, made } = layingOf(demo(narrow), narrow);
    expect(made).toMatchObject({ kind: 'cannot-lay' });
    expect(waysOut(from, cloth, choice)).toMatchObject({ openedOut: false, grains: ['straight'] });
    const slim = { ...CLOTH, width: inches(24) };
    const laying = layingOf(demo(slim), slim);
    const reason = laying.made.kind === 'cannot-lay' ? laying.made.reasons[0] : undefined;
    if (reason?.kind !== 'too-wide') throw new Error('the panel is 14 in wide, the cloth 11 1/2 in folded');
    const allowance = inches(0.5);
    const join = joinForWidth(laying.from, laying.cloth, laying.choice, {
      id: reason.id,
      across: reason.across,
      allowance,
    });
    if (!join) throw new Error('there is a join');
    const joined = layingOf(demo(), { ...slim, pieced: [join] });
    expect(joined.made.kind).toBe('task');
  });

  it('cuts a bias strip in lengths that together give what was wanted', () => {
    const strip = { id: 's', length: inches(100), width: inches(2), count: 1, cut: 'bias' as const };
    const across = inches(36);
    const cut = stripInLengths(strip, across, inches(0.25));
    // 36 in of width gives 50.9 in along the bias (36 times the root of 2), less the strip's own width.
    expect(cut?.count).toBe(3);
    expect(cut && cut.count * cut.length - 2 * 2 * inches(0.25) * Math.SQRT2).toBeCloseTo(inches(100), 6);
  });
});

describe('shrinkage before laying', () => {
  it('lays on the washed width and counts the length before it', () => {
    const shrinking = { ...CLOTH, shrinks: { along: 0.05, across: 0.02 } };
    const standing = layStanding(laid(demo(shrinking), shrinking), shrinking);
    // A yard that loses 1/20 is bought as 1 1/19.
    expect(standing?.needed).toBeCloseTo((inches(61) * 20) / 19, 0);
  });
});

describe('writeYards', () => {
  it('writes yards in eighths, and metres to the hundredth', () => {
    const said = (mm: number) => writeYards(mm).replaceAll('\u00a0', ' ');
    expect([914.4, 1600.2, 114.3, 2286].map(said)).toEqual(['1 yd', '1 3/4 yd', '1/8 yd', '2 1/2 yd']);
    expect(writeMetres(1549.4)).toBe('1.55\u00a0m');
  });
});
