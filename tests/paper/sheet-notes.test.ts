import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../bench/sample-garment';
import type { Words } from '../../core/drawing/drawing';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import { distanceToChord, flattenPath } from '../../core/geometry/flatten';
import { between, distance } from '../../core/geometry/point';
import { movedPoint } from '../../core/paper/moved-marks';
import { pageJoins } from '../../core/paper/page-joins';
import type { TapedSheet } from '../../core/paper/placed-piece';
import { sheetNotes, testSquares } from '../../core/paper/sheet-notes';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { inches } from '../../core/units/inch';
import { linden } from '../garment/linden';
import { at, pieceOf } from '../seams/pieces';
import { A4, garmentOf, LETTER } from './pieces';

/** Letters of all words here are taken to be this wide, in their height. */
const LETTER_WIDTH = 0.55;
const widthOf = (content: unknown, size: number) =>
  Math.min(30, JSON.stringify(content).length / 3) * size * LETTER_WIDTH;

function noted(garment: Garment) {
  const { sheets } = tapedSheets(cutPieces(garment), garment.paper);
  return sheets.map((sheet) => {
    const joins = pageJoins(sheet.plan);
    const squares = testSquares(sheet, garment, joins);
    return { sheet, squares, marks: sheetNotes(sheet, { garment, joins, squares, widthOf }) };
  });
}

const wordsIn = (marks: ReturnType<typeof sheetNotes>) => marks.filter((mark): mark is Words => mark.kind === 'words');

/** Places along words, 1 mm apart. */
function run({ at: middle, angle, size, content }: Words) {
  const half = content.kind === 'corner' ? 0 : widthOf(content, size) / 2;
  const [dx, dy] = [Math.cos(angle) * half, Math.sin(angle) * half];
  const [from, to] = [
    { x: middle.x - dx, y: middle.y - dy },
    { x: middle.x + dx, y: middle.y + dy },
  ];
  const steps = Math.ceil(2 * half) + 1;
  return Array.from({ length: steps + 1 }, (_, k) => between(from, to, k / steps));
}

/** How near any line of the pieces comes to the middle of words (mm). */
function nearestLine({ placed }: TapedSheet, words: Words): number {
  const chords = placed
    .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'stroke' ? [flattenPath(mark.path, 0.1)] : [])))
    .flatMap((line) => line.slice(1).map((to, index) => [line[index] as typeof to, to] as const));
  return Math.min(...run(words).flatMap((place) => chords.map(([from, to]) => distanceToChord(place, from, to))));
}

const GARMENTS: readonly (readonly [string, Garment])[] = [
  ['the sample', linden()],
  ['three gores close side by side', sampleGarment(3)],
  ['three gores on Letter, edge to edge', { ...sampleGarment(3), paper: { ...LETTER, joins: 'butted' } }],
  ['on A0', { ...sampleGarment(2), paper: { ...A4, size: 'a0' } }],
];

describe.each(GARMENTS)('what is noted on the pages of %s', (_, garment) => {
  const all = noted(garment);

  it('touches no line, lies off the test squares, and stands whole on one page, clear of what is cut away', () => {
    let looked = 0;
    for (const { sheet, squares, marks } of all) {
      const half = sheet.plan.paper.overlap / 2;
      for (const words of wordsIn(marks)) {
        if (words.content.kind === 'corner') continue;
        looked += 1;
        expect(nearestLine(sheet, words)).toBeGreaterThan(words.size * 0.5);
        const places = run(words);
        for (const { x, y } of squares) {
          expect(places.some((one) => one.x > x && one.x < x + 101.6 && one.y > y && one.y < y + 101.6)).toBe(false);
        }
        const whole = sheet.plan.pages.filter(({ window }) =>
          places.every(
            ({ x, y }) =>
              x > window.minX + half && x < window.maxX - half && y > window.minY + half && y < window.maxY - half,
          ),
        );
        expect(whole.length).toBeGreaterThanOrEqual(1);
      }
    }
    expect(looked).toBeGreaterThanOrEqual(4);
  });

  it('says of every edge once what it is, but of folds', () => {
    for (const { sheet, marks } of all) {
      const said = wordsIn(marks).flatMap(({ content }) => (content.kind === 'edge' ? [content.role] : []));
      const edges = sheet.placed.flatMap(({ piece }) => piece.edges.filter(({ role }) => role !== 'fold'));
      expect(said.length).toBeLessThanOrEqual(edges.length);
      expect(said.length).toBeGreaterThanOrEqual(edges.length - 1);
    }
  });

  it('asks for no page of its own', () => {
    for (const { sheet, marks } of all) {
      for (const { at: place } of wordsIn(marks)) {
        expect(
          sheet.plan.pages.some(
            ({ window: { minX, maxX, minY, maxY } }) =>
              place.x > minX && place.x < maxX && place.y > minY && place.y < maxY,
          ),
        ).toBe(true);
      }
    }
  });
});

describe('the numbers of corners', () => {
  it('stand within an inch of the corners that the whole is measured between', () => {
    // 18 by 24 in, so that it is 30 in from the first corner to the third.
    const corners = [at(0, 0), at(inches(18), 0), at(inches(18), inches(24)), at(0, inches(24))];
    const piece = pieceOf(
      corners,
      corners.map(() => ({ allowance: 15 })),
    );
    const [one] = noted(garmentOf([piece], A4));
    const [motion] = one?.sheet.placed.map((placed) => placed.motion) ?? [];
    const numbers = wordsIn(one?.marks ?? []).filter(({ content }) => content.kind === 'corner');
    expect(numbers.map(({ content }) => content)).toEqual([
      { kind: 'corner', number: 1 },
      { kind: 'corner', number: 3 },
    ]);
    numbers.forEach(({ at: place }, index) => {
      const corner = movedPoint(motion ?? { angle: 0, dx: 0, dy: 0 }, corners[index * 2] ?? at(0, 0));
      expect(distance(place, corner)).toBeLessThan(25.4);
    });
  });
});

describe('an opening', () => {
  const corners = [at(0, 0), at(180, 0), at(190, inches(7)), at(240, inches(24)), at(0, inches(24))];
  const roles = ['waist', 'opening', 'seam', 'hem', 'fold'] as const;
  const piece = pieceOf(
    corners,
    roles.map((role) => ({ role, ...(role !== 'fold' && { allowance: 15 }) })),
  );

  it('is said beside its end, with how long it is', () => {
    const [one] = noted(garmentOf([piece], A4));
    const words = wordsIn(one?.marks ?? []).filter(({ content }) => content.kind === 'opening');
    expect(words.map(({ content }) => content)).toEqual([
      { kind: 'opening', marks: 1, length: expect.closeTo(Math.hypot(10, inches(7)), 6) },
    ]);
    const end = corners[2] ?? at(0, 0);
    expect(Math.min(...words.flatMap(run).map((place) => distance(place, end)))).toBeLessThan(40);
  });
});

describe('a piece with little room', () => {
  it('has only what an edge is, or nothing, on it', () => {
    const strip = pieceOf(
      [at(0, 0), at(60, 0), at(60, 14), at(0, 14)],
      [0, 1, 2, 3].map(() => ({ allowance: 15, name: 'long edge of the band' })),
    );
    const [one] = noted(garmentOf([strip], A4));
    for (const { content } of wordsIn(one?.marks ?? [])) {
      if (content.kind === 'edge') expect(content.width).toBeUndefined();
    }
  });
});
