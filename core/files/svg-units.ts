/** Lengths, scales and transforms of SVG. See: W3C, SVG 2, chapter 8; CSS Values 3, section 6.2 (1 px = 1/96 in). */
import { type Affine, composeAffine, IDENTITY, rotationAbout, scaling, translation } from '../geometry/affine';

/** What one unit of a file may be. */
export const FILE_UNITS = ['mm', 'cm', 'in', 'px'] as const;
export type FileUnit = (typeof FILE_UNITS)[number];

/** Millimetres in one unit of a file; a pixel is 1/96 in. */
export const mmPerUnit: Readonly<Record<FileUnit, number>> = { mm: 1, cm: 10, in: 25.4, px: 25.4 / 96 };

/** Pixels in each unit of length that does not depend on letters or on the page. */
const PX: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  mm: 96 / 25.4,
  cm: 96 / 2.54,
  q: 96 / 101.6,
  in: 96,
  pt: 96 / 72,
  pc: 16,
};

const LENGTH = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*([a-z%]*)\s*$/i;

/** A length in user units; `undefined` for percentages, em and anything that is no length. */
export function lengthInUserUnits(text: string): number | undefined {
  return lengthParts(text)?.px;
}

function lengthParts(text: string): { readonly px: number; readonly unit: string } | undefined {
  // Longer than any length; and a pattern with an end may try a long row of figures once for each of them.
  if (text.length > 64) return undefined;
  const match = LENGTH.exec(text);
  const unit = (match?.[2] ?? '').toLowerCase();
  const px = Number(match?.[1]) * (PX[unit] ?? Number.NaN);
  return Number.isFinite(px) ? { px, unit } : undefined;
}

/**
 * From the user units of the drawing to millimetres, by the width, height and viewBox of its outermost element;
 * `undefined` where no width with a unit of its own says it. A plain number or a percentage is no unit.
 */
export function mapToMm(attributes: ReadonlyMap<string, string>): Affine | undefined {
  const width = lengthParts(attributes.get('width') ?? '');
  const height = lengthParts(attributes.get('height') ?? '');
  const known = [width, height].filter((length) => length && length.unit !== '' && length.px > 0);
  if (known.length === 0) return undefined;
  const view = (attributes.get('viewBox') ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [, , viewWidth, viewHeight] = view;
  if (view.length !== 4 || !view.every(Number.isFinite) || !viewWidth || !viewHeight) {
    return scaling(mmPerUnit.px, mmPerUnit.px);
  }
  const across = width && width.unit !== '' ? (width.px / viewWidth) * mmPerUnit.px : undefined;
  const down = height && height.unit !== '' ? (height.px / viewHeight) * mmPerUnit.px : undefined;
  if (across === undefined || down === undefined) {
    const both = (across ?? down) as number;
    return scaling(both, both);
  }
  if ((attributes.get('preserveAspectRatio') ?? '').trim().startsWith('none')) return scaling(across, down);
  const both = /\bslice\b/.test(attributes.get('preserveAspectRatio') ?? '') ? Math.max : Math.min;
  return scaling(both(across, down), both(across, down));
}

const STEP = /[\s,]*(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^()]*)\)/y;

/** A `transform` attribute as one map; `undefined` when it is not well formed. */
export function readTransform(text: string): Affine | undefined {
  let [map, at]: [Affine, number] = [IDENTITY, 0];
  while (at < text.length && /\S/.test(text.slice(at))) {
    STEP.lastIndex = at;
    const match = STEP.exec(text);
    const step = match && readStep(match[1] as string, (match[2] as string).trim());
    if (!step) return undefined;
    map = composeAffine(map, step);
    at = STEP.lastIndex;
  }
  return Object.values(map).every(Number.isFinite) ? map : undefined;
}

function readStep(name: string, text: string): Affine | undefined {
  const numbers = text.split(/[\s,]+/).map(Number);
  if (!numbers.every(Number.isFinite)) return undefined;
  const [a = 0, b, c, d, e, f] = numbers;
  const count = numbers.length;
  const angle = (a * Math.PI) / 180;
  switch (name) {
    case 'matrix':
      return count === 6 ? ({ a, b, c, d, e, f } as Affine) : undefined;
    case 'translate':
      return count <= 2 ? translation({ dx: a, dy: b ?? 0 }) : undefined;
    case 'scale':
      return count <= 2 ? scaling(a, b ?? a) : undefined;
    case 'rotate':
      return count === 1 || count === 3 ? rotationAbout({ x: b ?? 0, y: c ?? 0 }, angle) : undefined;
    case 'skewX':
      return count === 1 ? { ...IDENTITY, c: Math.tan(angle) } : undefined;
    default:
      return count === 1 ? { ...IDENTITY, b: Math.tan(angle) } : undefined;
  }
}
