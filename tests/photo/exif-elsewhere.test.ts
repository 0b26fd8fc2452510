import { describe, expect, it } from 'vitest';
import { readPictureHeader } from '../../app/photo/header/picture-header';

// Laid out by hand: EXIF in WebP, RFC 9649 section 2.7.1.5; in PNG, W3C Portable Network Graphics (third edition) 11.3.5;
// in HEIC and AVIF, ISO/IEC 14496-12, 8.11.3 and 8.11.6, with ISO/IEC 23008-12, A.2.1.

const text = (words: string) => [...words].map((letter) => letter.charCodeAt(0));
const big16 = (n: number) => [n >> 8, n & 0xff];
const big32 = (n: number) => [...big16(n >>> 16), ...big16(n & 0xffff)];
const little32 = (n: number) => big32(n).reverse();
const little24 = (n: number) => little32(n).slice(0, 3);

/** The way it is to be turned in the first directory; in the camera's own, a lens of 31 mm against 35 mm film. */
const block = [
  ...[...text('MM'), ...big16(42), ...big32(8)],
  ...[...big16(2), ...big16(0x0112), ...big16(3), ...big32(1), ...big16(6), 0, 0],
  ...[...big16(0x8769), ...big16(4), ...big32(1), ...big32(38), ...big32(0)],
  ...[...big16(1), ...big16(0xa405), ...big16(3), ...big32(1), ...big16(31), 0, 0, ...big32(0)],
];

/** 31 / 43.267 of the diagonal of 4000 by 3000. */
const FOCAL = (31 / Math.hypot(36, 24)) * 5000;

const box = (name: string, ...inside: (readonly number[])[]) => {
  const body = inside.flat();
  return [...big32(8 + body.length), ...text(name), ...body];
};

function webp(exif: readonly number[]) {
  const first = [...text('VP8X'), ...little32(10), 0x08, 0, 0, 0, ...little24(3999), ...little24(2999)];
  const odd = [...text('ICCP'), ...little32(3), 1, 2, 3, 0];
  const body = [...text('WEBP'), ...first, ...odd, ...text('EXIF'), ...little32(exif.length), ...exif];
  return Uint8Array.from([...text('RIFF'), ...little32(body.length), ...body]);
}

function png(exif: readonly number[]) {
  const chunk = (name: string, data: readonly number[]) => [...big32(data.length), ...text(name), ...data, 0, 0, 0, 0];
  const header = [...big32(4000), ...big32(3000), 8, 2, 0, 0, 0];
  const mark = [0x89, ...text('PNG'), 0x0d, 0x0a, 0x1a, 0x0a];
  const parts = [chunk('IHDR', header), chunk('eXIf', exif), chunk('IDAT', [7, 7, 7]), chunk('IEND', [])];
  return Uint8Array.from([...mark, ...parts.flat()]);
}

/** With an item of the picture and one of EXIF; numbers of items, and where they lie, in two bytes or four. */
function heif(brand: 'heic' | 'avif', { wide = false, runs = 1 } = {}) {
  const id = (n: number) => (wide ? big32(n) : big16(n));
  const infe = (n: number, kind: string) => box('infe', [wide ? 3 : 2, 0, 0, 0], id(n), big16(0), text(kind), [0]);
  const iinf = box('iinf', big32(0), big16(2), infe(1, 'hvc1'), infe(9, 'Exif'));
  const ispe = box('iprp', box('ipco', box('ispe', big32(0), big32(4000), big32(3000))));
  const brands = box('ftyp', text(brand), big32(0), text('mif1'));
  const item = [...big32(6), ...text('Exif'), 0, 0, ...block];
  const iloc = (at: number) => {
    const lies = (n: number, from: number, long: number) => {
      const run = [...big32(from), ...big32(long)];
      const pieces = n === 9 ? runs : 1;
      return [...id(n), ...(wide ? big16(0) : []), ...big16(0), ...big16(pieces), ...Array(pieces).fill(run).flat()];
    };
    const count = wide ? big32(2) : big16(2);
    return box('iloc', [wide ? 2 : 0, 0, 0, 0], [0x44, 0], count, lies(1, 7, 5), lies(9, at, item.length));
  };
  const meta = (at: number) => box('meta', big32(0), iinf, iloc(at), ispe);
  const at = brands.length + meta(0).length + 8;
  return Uint8Array.from([...brands, ...meta(at), ...box('mdat', item)]);
}

describe('what a camera noted is read', () => {
  it('in WebP and PNG, with the way the picture is to be turned', () => {
    const wanted = { widthPx: 4000, heightPx: 3000, turned: 6, focalPx: expect.closeTo(FOCAL, 3) };
    expect(readPictureHeader(webp(block))).toMatchObject({ format: 'webp', ...wanted });
    expect(readPictureHeader(webp([...text('Exif'), 0, 0, ...block]))).toMatchObject(wanted);
    expect(readPictureHeader(png(block))).toMatchObject({ format: 'png', ...wanted });
  });

  it('in HEIC and AVIF, where a box of the file says how it is turned and EXIF is not asked', () => {
    for (const wide of [false, true]) {
      for (const format of ['heic', 'avif'] as const) {
        const header = readPictureHeader(heif(format, { wide }));
        expect(header).toMatchObject({ format, widthPx: 4000, focalPx: expect.closeTo(FOCAL, 3) });
        expect(header).not.toHaveProperty('turned');
      }
    }
  });

  it('and left alone where it is spoilt, in several runs or not there', () => {
    for (const spoilt of [[], [1, 2, 3], text('not a camera at all'), block.slice(0, 20)]) {
      for (const file of [webp(spoilt), png(spoilt)]) {
        const header = readPictureHeader(file);
        expect(header).toMatchObject({ kind: 'picture', widthPx: 4000 });
        expect(header).not.toHaveProperty('focalPx');
      }
    }
    expect(readPictureHeader(heif('heic', { runs: 2 }))).not.toHaveProperty('focalPx');
    const whole = heif('heic');
    for (let at = 20; at < whole.length; at += 1) {
      const spoilt = Uint8Array.from(whole);
      spoilt[at] = 0xff;
      expect(['picture', 'cut-short', 'not-a-picture', 'too-many-pixels']).toContain(readPictureHeader(spoilt).kind);
    }
  });
});
