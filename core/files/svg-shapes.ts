/** The basic shapes of SVG as runs of lines and cubics. See: W3C, SVG 2, chapter 10. */
import type { Point } from '../geometry/point';
import { line, type Segment } from '../geometry/segment';
import { arcBetween, ellipseArc } from './elliptical-arc';
import { type PathData, readPathData } from './svg-path-data';
import { lengthInUserUnits } from './svg-units';

export type Attributes = ReadonlyMap<string, string>;

/** Elements that draw a line. */
export const SVG_SHAPES: ReadonlySet<string> = new Set([
  'path',
  'rect',
  'circle',
  'ellipse',
  'line',
  'polyline',
  'polygon',
]);

const NOTHING: PathData = { runs: [], isBroken: false };

/**
 * The runs of a shape element in its own user units. A shape without size draws nothing. Percentages are not read: the
 * shape then counts as broken.
 */
export function shapeRuns(element: string, attributes: Attributes): PathData {
  switch (element) {
    case 'path':
      return readPathData(attributes.get('d') ?? '');
    case 'polyline':
    case 'polygon':
      return pointsRuns(attributes.get('points') ?? '', element);
    case 'line':
      return sized(attributes, ['x1', 'y1', 'x2', 'y2'], ([x1, y1, x2, y2]) => ({
        runs: [[line({ x: x1, y: y1 }, { x: x2, y: y2 })]],
        isBroken: false,
      }));
    case 'circle':
      return sized(attributes, ['cx', 'cy', 'r'], ([cx, cy, r]) => wholeEllipse({ x: cx, y: cy }, r, r));
    case 'ellipse':
      return sized(attributes, ['cx', 'cy', 'rx', 'ry'], ([cx, cy, rx, ry]) => wholeEllipse({ x: cx, y: cy }, rx, ry));
    default:
      return rectangleRuns(attributes);
  }
}

type Four = [number, number, number, number];

/** The lengths of some attributes, 0 where one is not given. */
function sized(attributes: Attributes, names: readonly string[], use: (lengths: Four) => PathData): PathData {
  const lengths = names.map((name) => lengthInUserUnits(attributes.get(name) ?? '0'));
  return lengths.includes(undefined) ? { runs: [], isBroken: true } : use(lengths as Four);
}

function rectangleRuns(attributes: Attributes): PathData {
  return sized(attributes, ['x', 'y', 'width', 'height'], ([x, y, width, height]) => {
    if (!(width > 0 && height > 0)) return NOTHING;
    const rounding = ['rx', 'ry'].map((name) => lengthInUserUnits(attributes.get(name) ?? '0') ?? 0) as [
      number,
      number,
    ];
    const rx = Math.min(width / 2, Math.max(0, attributes.has('rx') ? rounding[0] : rounding[1]));
    const ry = Math.min(height / 2, Math.max(0, attributes.has('ry') ? rounding[1] : rounding[0]));
    const [right, foot] = [x + width, y + height];
    const round = (from: Point, to: Point) =>
      arcBetween(from, to, { rx, ry, turn: 0, isLarge: false, isClockwise: true });
    const corners = [
      [at(right - rx, y), at(right, y + ry)],
      [at(right, foot - ry), at(right - rx, foot)],
      [at(x + rx, foot), at(x, foot - ry)],
      [at(x, y + ry), at(x + rx, y)],
    ] as const;
    const path = corners.flatMap(([from, to], i): Segment[] => {
      const before = corners[(i + 3) % 4] as (typeof corners)[0];
      return [line(before[1], from), ...round(from, to)];
    });
    return { runs: [path], isBroken: false };
  });
}

function wholeEllipse(centre: Point, rx: number, ry: number): PathData {
  if (!(rx > 0 && ry > 0)) return NOTHING;
  const path = ellipseArc({
    centre,
    across: { dx: rx, dy: 0 },
    down: { dx: 0, dy: ry },
    from: 0,
    sweep: 2 * Math.PI,
  });
  return { runs: [path], isBroken: false };
}

function pointsRuns(text: string, element: 'polyline' | 'polygon'): PathData {
  const read = readPathData(text.trim() === '' ? '' : `M${text}${element === 'polygon' ? 'Z' : ''}`);
  // Letters have no place in a list of points.
  return /[a-df-z]/i.test(text) ? { runs: [], isBroken: true } : read;
}

function at(x: number, y: number): Point {
  return { x, y };
}
