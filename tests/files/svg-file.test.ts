import { execFileSync, spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSvg } from '../../core/files/read-svg';
import { svgFile } from '../../core/files/svg-file';
import { xmlEvents } from '../../core/files/xml-reader';
import { outlineOf } from '../../core/garment/outline';
import { garmentOf, rectangle } from '../paper/pieces';
import { greyPages, hasReaders, inkNear } from '../paper/print-tools';
import { randomPiece, seeded } from '../seams/random-piece';
import { furthestApart, onlyPiece, panel, reading, written } from './files';

const hasRenderer = spawnSync('rsvg-convert', ['--version']).status === 0;
if (!hasRenderer) console.log('Skipped: librsvg2-bin is not installed, so SVG files cannot be measured as drawn.');

function fileOf(...pieces: Parameters<typeof garmentOf>[0]): string {
  return svgFile(garmentOf(pieces), written) ?? '';
}

describe('svgFile', () => {
  it('gives nothing for a garment of guides alone', () => {
    expect(svgFile(garmentOf([rectangle(0, 0, 70, 40, { use: 'guide' })]), written)).toBeUndefined();
  });

  it('says its size in mm and in the same figures as its viewBox', () => {
    const size = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="(-?\d+) (-?\d+) ([\d.]+) ([\d.]+)"/.exec(
      fileOf(rectangle(30, -40, 137, 83)),
    );
    expect(size?.slice(5, 7)).toEqual(size?.slice(1, 3));
    const [x, y, width, height] = (size ?? []).slice(3, 7).map(Number) as [number, number, number, number];
    expect(x).toBeLessThan(30);
    expect(y).toBeLessThan(-40);
    expect(x + width).toBeGreaterThan(167);
    expect(y + height).toBeGreaterThan(43);
  });

  it('names a layer for everything a full piece holds, and marks the version', () => {
    const text = fileOf(panel(), rectangle(0, 0, 70, 40, { use: 'guide' }));
    for (const layer of ['outline', 'stitch', 'cut', 'fold', 'grain', 'notches', 'marks', 'words']) {
      expect(text).toContain(`<g id="piece-1-${layer}"`);
      expect(text).toContain(`<title>the ${layer}</title>`);
    }
    expect(text).toMatch(/<desc>Linden petticoat, 2026-03-01, version [2-9A-Z]{5}<\/desc>/);
    expect(text).not.toContain('id="piece-2"');
  });

  it('keeps names in any script, and stays well formed whatever the name', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (name) => {
        const events = xmlEvents(fileOf(rectangle(0, 0, 90, 60, { name })));
        for (;;) {
          const next = events.next();
          if (next.done) return next.value === undefined;
        }
      }),
      { seed: 7, numRuns: 30 },
    );
    for (const name of ['Ärmel <rechts> & "links"', 'スカート', 'תחתונית', 'Jupe d’été 🧵']) {
      expect(onlyPiece(readSvg(fileOf(rectangle(0, 0, 90, 60, { name })), reading)).name).toBe(name);
    }
  });

  it('brings every outline back within 0.01 mm, edge for edge', () => {
    fc.assert(
      fc.property(fc.nat(1e6), (seed) => {
        const piece = randomPiece(seeded(seed));
        const back = onlyPiece(readSvg(fileOf(piece), reading));
        expect(back.edges).toHaveLength(piece.edges.length);
        expect(furthestApart(outlineOf(piece).whole, outlineOf(back).whole)).toBeLessThan(0.01);
      }),
      { seed: 7, numRuns: 25 },
    );
  });

  it('brings fold, grain, notches, square ends and the allowance state back', () => {
    const [piece, back] = [panel(), onlyPiece(readSvg(fileOf(panel()), reading))];
    expect(back).toMatchObject({ name: piece.name, drawnAs: 'net', cut: { how: 'fold' } });
    expect(back.edges.map(({ role }) => role)).toEqual(['seam', 'seam', 'seam', 'fold']);
    const ends = back.edges.map(({ shape }) => (shape.kind === 'curve' ? `${shape.leaves} ${shape.meets}` : ''));
    expect(ends).toEqual(['', 'square free', 'free square', '']);
    expect(back.grain?.from.y).toBeCloseTo(178, 4);
    expect(back.grain?.to.y).toBeCloseTo(559, 4);
    expect(back.notches).toMatchObject([{ edgeId: back.edges[1]?.id, along: expect.closeTo(207, 2), count: 2 }]);
  });

  it.skipIf(!hasRenderer || !hasReaders)('is drawn by librsvg at its true size, within 0.1 mm', () => {
    const text = fileOf(rectangle(20, 30, 137, 83));
    const pdf = execFileSync('rsvg-convert', ['--format=pdf'], { input: text });
    const page = greyPages(pdf, 508)[0];
    const [x, y] = (/viewBox="(-?\d+) (-?\d+)/.exec(text) ?? []).slice(1).map(Number) as [number, number];
    if (!page) throw new Error('there is no page');
    const ink = (atX: number, atY: number, along: 'x' | 'y') =>
      inkNear(page, { x: atX - x, y: atY - y }, along, 2) ?? Number.NaN;
    expect(ink(157, 40, 'x') - ink(20, 40, 'x')).toBeCloseTo(137, 1);
    expect(ink(30, 113, 'y') - ink(30, 30, 'y')).toBeCloseTo(83, 1);
  });
});
