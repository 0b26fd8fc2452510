import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPictureHeader } from '../../app/photo/header/picture-header';

// The files below are laid out by hand from the standards: JPEG, ITU-T T.81 annex B; PNG, W3C Portable Network Graphics
// (third edition) 5.3 and 11.2.1; WebP, RFC 9649 sections 2.5 to 2.7;
// GIF89a, sections 17, 18 and 27; TIFF 6.0, section 2; HEIF, ISO/IEC 14496-12, 4.2 and 23008-12, 6.5.3; BITMAPINFOHEADER.

const text = (words: string) => [...words].map((letter) => letter.charCodeAt(0));
const big16 = (n: number) => [n >> 8, n & 0xff];
const big32 = (n: number) => [...big16(n >>> 16), ...big16(n & 0xffff)];
const little16 = (n: number) => big16(n).reverse();
const little24 = (n: number) => [...little16(n & 0xffff), n >>> 16];
const little32 = (n: number) => big32(n).reverse();
const file = (...parts: (readonly number[])[]) => Uint8Array.from(parts.flat());

/** A thumbnail's end marker lies in the EXIF part, so that a search for the end must not be taken in by it. */
const exif = [0xff, 0xe1, ...big16(12), ...text('Exif'), 0, 0, 0xff, 0xd9, 1, 2];
function jpeg(width: number, height: number, options: { frame?: number; end?: readonly number[] } = {}) {
  const { frame = 0xc0, end = [0xff, 0xd9] } = options;
  const huffman = [0xff, 0xc4, ...big16(5), 0, 0, 0];
  const sof = [0xff, frame, ...big16(11), 8, ...big16(height), ...big16(width), 1, 1, 0x11, 0];
  const scan = [0xff, 0xda, ...big16(8), 1, 1, 0, 0, 63, 0, 0x12, 0xff, 0x00, 0x34];
  return file([0xff, 0xd8], exif, huffman, sof, scan, end);
}

const pngMark = [0x89, ...text('PNG'), 0x0d, 0x0a, 0x1a, 0x0a];
const chunk = (name: string, data: readonly number[]) => [...big32(data.length), ...text(name), ...data, 0, 0, 0, 0];
function png(width: number, height: number) {
  const header = [...big32(width), ...big32(height), 8, 2, 0, 0, 0];
  return file(pngMark, chunk('IHDR', header), chunk('IDAT', [7, 7, 7]), chunk('IEND', []));
}

function riff(...chunks: (readonly number[])[]) {
  const body = [...text('WEBP'), ...chunks.flat()];
  return file(text('RIFF'), little32(body.length), body);
}
const vp8 = (w: number, h: number) =>
  riff([...text('VP8 '), ...little32(10), 0x30, 1, 0, 0x9d, 0x01, 0x2a, ...little16(w), ...little16(h)]);
const vp8l = (w: number, h: number) =>
  riff([...text('VP8L'), ...little32(10), 0x2f, ...little32((w - 1) | ((h - 1) << 14)), 0, 0, 0, 0, 0]);
const vp8x = (w: number, h: number) =>
  riff([...text('VP8X'), ...little32(10), 0x10, 0, 0, 0, ...little24(w - 1), ...little24(h - 1)]);

const gif = (w: number, h: number) =>
  file(text('GIF89a'), little16(w), little16(h), [0xf0, 0, 0, 1, 2, 3, 4, 5, 6, 0x3b]);
const bmp = (w: number, h: number) =>
  file(text('BM'), little32(58), little32(0), little32(54), little32(40), little32(w), little32(h), Array(32).fill(0));

/** One directory of entries (tag, type 3 or 4, value), and one strip of 8 bytes behind it. */
function tiff(entries: readonly (readonly [number, number, number])[], behind: readonly number[] = []) {
  const entry = ([tag, type, value]: readonly [number, number, number]) => [
    ...little16(tag),
    ...little16(type),
    ...little32(1),
    ...little32(value),
  ];
  return file(text('II*'), [0], little32(8), little16(entries.length), entries.flatMap(entry), little32(0), behind);
}
const box = (name: string, ...inside: (readonly number[])[]) => {
  const body = inside.flat();
  return [...big32(8 + body.length), ...text(name), ...body];
};
const ispe = (w: number, h: number) => box('ispe', big32(0), big32(w), big32(h));
const heif = (brand: string, ...sizes: (readonly number[])[]) =>
  file(
    box('ftyp', text(brand), big32(0), text('mif1')),
    box('meta', big32(0), box('iprp', box('ipco', ...sizes))),
    box('mdat', [1, 2, 3, 4]),
  );

describe('readPictureHeader gives the format and the stored size', () => {
  it.each([
    ['a baseline JPEG', jpeg(4032, 3024), 'jpeg', 4032, 3024],
    ['a progressive JPEG', jpeg(640, 481, { frame: 0xc2 }), 'jpeg', 640, 481],
    ['a JPEG with bytes after its end', jpeg(300, 200, { end: [0xff, 0xd9, 1, 2, 3] }), 'jpeg', 300, 200],
    ['a PNG', png(747, 1024), 'png', 747, 1024],
    ['a lossy WebP', vp8(1234, 567), 'webp', 1234, 567],
    ['a lossless WebP', vp8l(1021, 16_383), 'webp', 1021, 16_383],
    ['an extended WebP', vp8x(70_001, 803), 'webp', 70_001, 803],
    ['a GIF', gif(747, 1024), 'gif', 747, 1024],
    ['a bitmap', bmp(31, 17), 'bmp', 31, 17],
    ['a bitmap from the top down', bmp(31, 2 ** 32 - 17), 'bmp', 31, 17],
    ['an AVIF', heif('avif', ispe(300, 401)), 'avif', 300, 401],
    [
      'a HEIC of tiles, with its thumbnail',
      heif('heic', ispe(512, 512), ispe(4032, 3024), ispe(320, 240)),
      'heic',
      4032,
      3024,
    ],
    [
      'a TIFF',
      tiff([
        [256, 3, 640],
        [257, 4, 481],
      ]),
      'tiff',
      640,
      481,
    ],
  ])('of %s', (_, bytes, format, widthPx, heightPx) => {
    expect(readPictureHeader(bytes)).toEqual({ kind: 'picture', format, widthPx, heightPx });
  });

  it('also when the bytes are a window into a larger buffer', () => {
    const inner = png(31, 17);
    const outer = new Uint8Array(inner.length + 50);
    outer.set(inner, 13);
    expect(readPictureHeader(outer.subarray(13, 13 + inner.length))).toMatchObject({ widthPx: 31, heightPx: 17 });
  });
});

describe('readPictureHeader tells how finely a picture was scanned', () => {
  const perInch = (bytes: Uint8Array) => {
    const read = readPictureHeader(bytes);
    return read.kind === 'picture' ? read.fineness && [read.fineness.across * 25.4, read.fineness.down * 25.4] : read;
  };
  const jfif = (unit: number, across: number, down: number) => {
    const app0 = [0xff, 0xe0, ...big16(16), ...text('JFIF'), 0, 1, 2, unit, ...big16(across), ...big16(down), 0, 0];
    const plain = jpeg(90, 70);
    return file([...plain.slice(0, 2)], app0, [...plain.slice(2)]);
  };
  /** A fraction of two longs lies behind the directory of `count` entries. */
  const fractionAt = (count: number) => 8 + 2 + 12 * count + 4;

  it('of a JPEG in inches and in centimetres', () => {
    expect(perInch(jfif(1, 300, 600))).toEqual([300, 600]);
    expect((perInch(jfif(2, 118, 118)) as number[])[0]).toBeCloseTo(299.72, 2);
  });

  it('of a PNG in dots to the metre', () => {
    const header = [...big32(90), ...big32(70), 8, 2, 0, 0, 0];
    const scanned = file(
      pngMark,
      chunk('IHDR', header),
      chunk('pHYs', [...big32(11_811), ...big32(7874), 1]),
      chunk('IEND', []),
    );
    expect((perInch(scanned) as number[]).map(Math.round)).toEqual([300, 200]);
  });

  it('of a TIFF, with the way it is turned', () => {
    const at = fractionAt(5);
    const scanned = tiff(
      [
        [256, 3, 640],
        [257, 3, 481],
        [274, 3, 6],
        [282, 5, at],
        [283, 5, at],
      ],
      [...little32(2400), ...little32(8)],
    );
    expect(perInch(scanned)).toEqual([300, 300]);
    expect(readPictureHeader(scanned)).toMatchObject({ turned: 6 });
  });

  it('and believes neither 72 nor 96, which programs write that do not know', () => {
    expect(perInch(jfif(1, 72, 72))).toBeUndefined();
    expect(perInch(jfif(1, 96, 96))).toBeUndefined();
    expect(perInch(jfif(1, 0, 300))).toBeUndefined();
  });
});

// Laid out by hand from CIPA DC-008 (EXIF 2.3), 4.6.2 and 4.6.5; the diagonal of a frame of film, 36 by 24 mm, is 43.267 mm.
describe('readPictureHeader gives the focal length a camera noted, in pixels', () => {
  type Entry = readonly [tag: number, type: 3 | 5, value: number];
  /** A photo of 4000 by 3000 whose EXIF part has one directory that points at the camera's own. */
  function photo(entries: readonly Entry[], size: readonly [number, number] = [4000, 3000]) {
    const own = 8 + 2 + 12 + 4;
    const fractions = own + 2 + 12 * entries.length + 4;
    const rows = entries.flatMap(([tag, type, value], k) => {
      const told = type === 3 ? [...little16(value), 0, 0] : little32(fractions + 8 * k);
      return [...little16(tag), ...little16(type), ...little32(1), ...told];
    });
    const thousandths = entries.flatMap(([, , value]) => [...little32(Math.round(value * 1000)), ...little32(1000)]);
    const first = [...text('II*'), 0, ...little32(8), ...little16(1)];
    const points = [...little16(0x8769), ...little16(4), ...little32(1), ...little32(own), ...little32(0)];
    const block = [...first, ...points, ...little16(entries.length), ...rows, ...little32(0), ...thousandths];
    const app1 = [0xff, 0xe1, ...big16(8 + block.length), ...text('Exif'), 0, 0, ...block];
    const plain = jpeg(...size);
    return readPictureHeader(file([...plain.slice(0, 2)], app1, [...plain.slice(2)]));
  }

  it('against 35 mm film, by the diagonal', () => {
    // 26 / 43.267 of a diagonal of 5000.
    expect(photo([[0xa405, 3, 26]])).toMatchObject({ focalPx: expect.closeTo(3004.6, 1) });
    expect(photo([[0xa405, 3, 26]], [3000, 4000])).toMatchObject({ focalPx: expect.closeTo(3004.6, 1) });
  });

  it('in mm with the fineness of the sensor, of a picture made smaller since', () => {
    const camera: Entry[] = [
      [0x920a, 5, 5.4],
      [0xa002, 3, 4000],
      [0xa003, 3, 3000],
      [0xa20e, 5, 14_000],
      [0xa210, 3, 2],
    ];
    // 5.4 mm of 14000 pixels to the inch; and half of that in a picture of half the size.
    expect(photo(camera)).toMatchObject({ focalPx: expect.closeTo((5.4 * 14_000) / 25.4, 3) });
    expect(photo(camera, [2000, 1500])).toMatchObject({ focalPx: expect.closeTo((5.4 * 7000) / 25.4, 3) });
  });

  it('but not of a picture cut since, zoomed, or of a lens that cannot be', () => {
    const size: Entry[] = [
      [0xa002, 3, 4000],
      [0xa003, 3, 3000],
    ];
    expect(photo([...size, [0xa405, 3, 26]], [4000, 3000])).toHaveProperty('focalPx');
    expect(photo([...size, [0xa405, 3, 26]], [4000, 2600])).not.toHaveProperty('focalPx');
    expect(
      photo([
        [0xa404, 5, 2.5],
        [0xa405, 3, 26],
      ]),
    ).not.toHaveProperty('focalPx');
    expect(photo([[0xa405, 3, 0]])).not.toHaveProperty('focalPx');
    expect(photo([[0xa405, 3, 4000]])).not.toHaveProperty('focalPx');
    expect(photo([[0x920a, 5, 5.4]])).not.toHaveProperty('focalPx');
  });
});

describe('readPictureHeader refuses by name', () => {
  it('an empty file', () => {
    expect(readPictureHeader(new Uint8Array())).toEqual({ kind: 'empty-file' });
  });

  it.each([
    ['words that are called a picture', file(text('This is a letter, not a picture, whatever its name says.'))],
    ['a JPEG start with no picture behind it', file([0xff, 0xd8, 0xff, 0xda], big16(8), [1, 2, 3, 4, 5, 6, 7, 8])],
    ['a PNG mark with another chunk first', file(pngMark, chunk('tEXt', text('thirteen long')), chunk('IEND', []))],
    ['a picture of no width', png(0, 12)],
  ])('%s', (_, bytes) => {
    expect(readPictureHeader(bytes)).toEqual({ kind: 'not-a-picture' });
  });

  it.each([
    ['pdf', file(text('%PDF-1.7\n%'))],
    ['big-tiff', file(text('II+'), [0], little32(8))],
    ['jpeg-xl', file([0xff, 0x0a, 0x11, 0x22])],
    ['svg', file(text('<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg"/>'))],
  ])('a known kind that cannot be read yet: %s', (format, bytes) => {
    expect(readPictureHeader(bytes)).toEqual({ kind: 'other-format', format });
  });

  it('a picture of any kind whose end is missing', () => {
    const strip = tiff(
      [
        [256, 3, 640],
        [257, 3, 481],
        [273, 4, 62],
        [279, 4, 8],
      ],
      [1, 2, 3, 4, 5, 6, 7, 8],
    );
    const heic = heif('heic', ispe(900, 700));
    for (const whole of [jpeg(900, 700), png(900, 700), vp8x(900, 700), gif(9, 7), bmp(9, 7), strip, heic]) {
      for (const share of [0.45, 0.6, 0.95]) {
        const part = whole.slice(0, Math.floor(whole.length * share));
        expect(readPictureHeader(part)).toEqual({ kind: 'cut-short' });
      }
    }
  });

  it('a small file that claims 60,000 by 60,000 pixels, whole or cut short', () => {
    const claim = { kind: 'too-many-pixels', widthPx: 60_000, heightPx: 60_000 };
    expect(readPictureHeader(png(60_000, 60_000))).toEqual(claim);
    expect(readPictureHeader(jpeg(60_000, 60_000))).toEqual(claim);
    expect(readPictureHeader(vp8x(60_000, 60_000))).toEqual(claim);
    expect(readPictureHeader(png(60_000, 60_000).slice(0, 40))).toEqual(claim);
  });

  it('nothing at 100 megapixels, and one row more', () => {
    expect(readPictureHeader(png(12_500, 8000)).kind).toBe('picture');
    expect(readPictureHeader(png(12_500, 8001)).kind).toBe('too-many-pixels');
  });

  it('whatever the bytes are, without throwing', () => {
    const starts = [
      [0xff, 0xd8, 0xff],
      pngMark,
      [...text('RIFF'), 9, 0, 0, 0, ...text('WEBPVP8X')],
      text('BM'),
      text('II*\0'),
      text('MM\0*'),
      text('GIF89a'),
      box('ftyp', text('heic'), big32(0)),
      [],
    ];
    const bytes = fc.tuple(fc.constantFrom(...starts), fc.uint8Array({ maxLength: 80 }));
    fc.assert(
      fc.property(bytes, ([start, rest]) => {
        const read = readPictureHeader(file(start, [...rest]));
        if (read.kind === 'picture') expect(read.widthPx * read.heightPx).toBeGreaterThan(0);
      }),
      { seed: 7 },
    );
  });
});
