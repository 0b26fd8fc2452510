import { describe, expect, it } from 'vitest';
import { isOneColour } from '../../app/workers/decode-picture';
import { halvings, laidFlat, smallCopy } from '../../app/workers/picture-levels';
import { diagramMap } from '../../core/diagram/diagram-map';
import type { Raster } from '../../core/picture/raster';
import { sampleDiagram, set } from '../diagram/sample-diagram';

/** A picture whose red grows evenly across and whose green grows evenly down, so that a colour tells its own place. */
function ramp(width: number, height: number): Raster {
  const pixels = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      pixels.set([(255 * (x + 0.5)) / width, (255 * (y + 0.5)) / height, 40, 255], (y * width + x) * 4);
    }
  }
  return { pixels, width, height };
}

/** Red and green of a pixel as shares of the way across and down. */
function placeAt({ pixels, width }: Raster, x: number, y: number): readonly [number, number] {
  const at = (y * width + x) * 4;
  return [(pixels[at] as number) / 255, (pixels[at + 1] as number) / 255];
}

const WIDTH = 1203;
const HEIGHT = 905;
const whole = { raster: ramp(WIDTH, HEIGHT), pxToPx: { across: 1, down: 1 } };

describe('halvings', () => {
  it('goes down to a quick size, each half as wide, odd rows left off', () => {
    expect(halvings(whole.raster).map(({ width, height }) => [width, height])).toEqual([
      [1203, 905],
      [601, 452],
    ]);
  });
});

describe('laidFlat', () => {
  const diagram = sampleDiagram({ widthPx: WIDTH, heightPx: HEIGHT });
  const map = diagramMap(diagram, set);
  if (map.kind !== 'map') throw new Error(map.why);
  const mm = map.across;
  const plan = {
    width: 240,
    height: 180,
    origin: { x: 1.5 * mm, y: 2.5 * mm },
    mmPerPx: { across: 5 * mm, down: 5 * mm },
    map,
  };

  it.each([
    ['the whole picture', whole],
    ['a smaller copy, whose odd last row and column are gone', smallCopy(whole, halvings(whole.raster), 0.4e6)],
  ])('shows each place where the plan says, from %s', (_, copy) => {
    const laid = laidFlat(copy, plan);
    for (const [x, y] of [
      [3, 7],
      [117, 95],
      [231, 170],
    ] as const) {
      const [across, down] = placeAt(laid, x, y);
      // The centre of pixel (x, y) of the flat picture lies at 5 (x + 1/2) + 1.5 across in the photo, and so on.
      expect(Math.abs(across - (5 * (x + 0.5) + 1.5) / WIDTH)).toBeLessThan(1 / 255);
      expect(Math.abs(down - (5 * (y + 0.5) + 2.5) / HEIGHT)).toBeLessThan(1 / 255);
    }
  });

  it('tells the share done on the way', () => {
    const shares: number[] = [];
    laidFlat(whole, { ...plan, height: 300 }, (share) => shares.push(share));
    expect(shares.length).toBeGreaterThan(0);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
  });
});

describe('smallCopy', () => {
  it('is the first halving that fits, and says how many of its pixels go to one of the photo', () => {
    const copy = { raster: whole.raster, pxToPx: { across: 0.5, down: 0.25 } };
    expect(smallCopy(copy, halvings(copy.raster), 0.4e6)).toMatchObject({
      raster: { width: 601 },
      pxToPx: { across: 0.25, down: 0.125 },
    });
  });
});

describe('isOneColour', () => {
  const sheet = (grey: number, odd: number): Raster => {
    const pixels = new Uint8ClampedArray(300 * 200 * 4).fill(grey);
    for (let at = 0; at < pixels.length / 3; at++) pixels[at] = odd;
    return { pixels, width: 300, height: 200 };
  };

  it('knows a white and a black picture, and one with less than camera noise', () => {
    expect(isOneColour(sheet(255, 255))).toBe(true);
    expect(isOneColour(sheet(0, 0))).toBe(true);
    expect(isOneColour(sheet(250, 252))).toBe(true);
  });

  it('lets a faint drawing pass', () => {
    expect(isOneColour(sheet(250, 240))).toBe(false);
  });
});
