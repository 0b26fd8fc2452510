/**
 * How exact and how fast the geometry is, with bezier-js 6.1.4 measured in the same run on the same curves.
 *
 * The curves: ten reference curves at garment size and 1,000 seeded random cubics in a square of 300 mm, none of them
 * crossing itself. Errors are measured along normals and both ways (see tests/geometry/parallel-error). Times are
 * medians of several rounds.
 */
import { Bezier } from 'bezier-js';
import { moveThrough } from '../core/garment/move-point';
import { outlineOf } from '../core/garment/outline';
import { scaling, transformSegment } from '../core/geometry/affine';
import { parallelOf } from '../core/geometry/parallel';
import { distance } from '../core/geometry/point';
import { type Cubic, cubic, line, type Path } from '../core/geometry/segment';
import { segmentLength } from '../core/geometry/segment-length';
import { cubicLoop } from '../core/geometry/self-crossing';
import { closedSplineThrough, splineThrough } from '../core/geometry/spline';
import { cutLine } from '../core/seams/cut-line';
import { CLOSED, OPEN } from '../tests/geometry/metapost-curves';
import { errorAlongNormals, errorOfMissing, trueParallel } from '../tests/geometry/parallel-error';
import { REFERENCE_CURVES } from '../tests/geometry/reference-curves';
import { cubicOf, seededRandom } from '../tests/geometry/shapes';
import type { Figure } from './figure';
import { sampleGarment } from './sample-garment';
import { quantile, timesOf } from './timing';

const ACCURACY = 0.01;
/** 5/8 in, the commonest allowance. */
const DISTANCE = 15.875;
const ROUNDS = 7;

/** Every figure of the geometry group. Takes some ten seconds. */
export async function geometryFigures(): Promise<Figure[]> {
  const curves = [...garmentSized(), ...randomCubics(1000)];
  const gentle = curves.filter(isGentle);
  return [...offsetFigures(curves, gentle), ...lengthFigures(curves, gentle), hobbyFigure(), ...dragStepFigures()];
}

/** The reference curves with a longest chord or arm of at least 100 mm, without the one that crosses itself. */
function garmentSized(): Cubic[] {
  return REFERENCE_CURVES.map(({ curve }) => curve)
    .filter((curve) => !cubicLoop(curve))
    .map((curve) => {
      const size = Math.max(...[curve.p1, curve.p2, curve.p3].map((point) => distance(curve.p0, point)));
      const factor = size < 2 ? 100 : size < 20 ? 25.4 : 1;
      return transformSegment(scaling(factor, factor), curve) as Cubic;
    });
}

function randomCubics(count: number): Cubic[] {
  const random = seededRandom(20);
  const place = () => [random() * 300, random() * 300] as const;
  const curves: Cubic[] = [];
  while (curves.length < count) {
    const curve = cubicOf(place(), place(), place(), place());
    if (!cubicLoop(curve)) curves.push(curve);
  }
  return curves;
}

/** Curves like real edges: they turn less than a right angle in all, and their arms are not far from a third. */
function isGentle({ p0, p1, p2, p3 }: Cubic): boolean {
  const legs = [
    [p0, p1],
    [p1, p2],
    [p2, p3],
  ] as const;
  const angles = legs.map(([a, b]) => Math.atan2(b.y - a.y, b.x - a.x));
  const turn = (a: number, b: number) => Math.abs(Math.atan2(Math.sin(b - a), Math.cos(b - a)));
  const lengths = legs.map(([a, b]) => distance(a, b));
  return (
    turn(angles[0] as number, angles[1] as number) + turn(angles[1] as number, angles[2] as number) < Math.PI / 2 &&
    Math.max(...lengths) < 4 * Math.min(...lengths)
  );
}

function offsetFigures(curves: readonly Cubic[], gentle: readonly Cubic[]): Figure[] {
  const ours = (curve: Cubic, offset: number) => parallelOf([curve], offset, { accuracy: ACCURACY });
  const pieces = curves.map((curve) => ours(curve, DISTANCE)?.length ?? 0);
  const all = raced(
    curves,
    (curve) => ours(curve, DISTANCE),
    (curve) => asBezier(curve).offset(DISTANCE),
  );
  const edges = raced(
    gentle,
    (curve) => ours(curve, DISTANCE),
    (curve) => asBezier(curve).offset(DISTANCE),
  );
  return [
    {
      name: 'offset_error_mm_max',
      value: worstOffset(curves, ours),
      unit: 'mm',
      baseline: worstOffset(curves, offsetOfBezierJs),
    },
    {
      name: 'offset_error_gentle_mm_max',
      value: worstOffset(gentle, ours),
      unit: 'mm',
      baseline: worstOffset(gentle, offsetOfBezierJs),
    },
    { name: 'offset_pieces_mean', value: pieces.reduce((a, b) => a + b, 0) / pieces.length, unit: 'pieces' },
    { name: 'offset_ops_ratio', ...all },
    { name: 'offset_gentle_ops_ratio', ...edges },
  ];
}

/** The largest error of a parallel on either side of any of the curves, along normals and both ways. */
function worstOffset(curves: readonly Cubic[], offset: (curve: Cubic, by: number) => Path | undefined): number {
  let worst = 0;
  for (const curve of curves) {
    for (const by of [DISTANCE, -DISTANCE]) {
      const found = offset(curve, by);
      if (!found || found.length === 0) continue;
      worst = Math.max(worst, errorAlongNormals([curve], found, by, 16));
      worst = Math.max(worst, errorOfMissing(trueParallel([curve], by, 40), found));
    }
  }
  return worst;
}

/** Its offset, which lies to the left in numbers that run upwards: the other side here. */
function offsetOfBezierJs(curve: Cubic, by: number): Path {
  const pieces = asBezier(curve).offset(-by) as Bezier[];
  return pieces.map(({ points: [a, b, c, d] }) => (a && b && c && d ? cubic(a, b, c, d) : line(curve.p0, curve.p3)));
}

function lengthFigures(curves: readonly Cubic[], gentle: readonly Cubic[]): Figure[] {
  const exact = curves.map((curve) => segmentLength(curve, 1e-12));
  const worst = (length: (curve: Cubic) => number) =>
    Math.max(...curves.map((curve, i) => Math.abs(length(curve) - (exact[i] as number))));
  const prepared = new Map(curves.map((curve) => [curve, asBezier(curve)]));
  return [
    {
      name: 'length_error_mm_max',
      value: worst((curve) => segmentLength(curve)),
      unit: 'mm',
      baseline: worst((curve) => asBezier(curve).length()),
    },
    { name: 'length_ops_ratio', ...raced(curves, segmentLength1, (curve) => asBezier(curve).length(), 40) },
    { name: 'length_gentle_ops_ratio', ...raced(gentle, segmentLength1, (curve) => asBezier(curve).length(), 40) },
    {
      // Its curve objects made beforehand and kept, which plain points do not need.
      name: 'length_prepared_ops_ratio',
      ...raced(curves, segmentLength1, (curve) => prepared.get(curve)?.length(), 40),
    },
  ];
}

const segmentLength1 = (curve: Cubic) => segmentLength(curve);

/** The furthest any control point is from where MetaPost 2.02 puts it. */
function hobbyFigure(): Figure {
  let worst = 0;
  const drawn = [
    ...OPEN.map(({ through, directions, arms }) => ({
      arms,
      curves: splineThrough(through, directions ? { directions } : {}),
    })),
    ...CLOSED.map(({ through, arms }) => ({ arms, curves: closedSplineThrough(through) })),
  ];
  for (const { arms, curves } of drawn) {
    curves.forEach(({ p1, p2 }, i) => {
      const [x1, y1, x2, y2] = arms[i] as (typeof arms)[number];
      worst = Math.max(worst, distance(p1, { x: x1, y: y1 }), distance(p2, { x: x2, y: y2 }));
    });
  }
  return { name: 'hobby_error_max', value: worst, unit: 'mm' };
}

/**
 * One step of a drag on a piece of 40 points with an allowance on every edge: one point moves, and outline and cut line
 * are worked out anew. The goal is 1 ms for 95 steps in 100.
 */
function dragStepFigures(): Figure[] {
  const piece = sampleGarment(1).pieces[0];
  const edge = piece?.edges[1];
  const at = edge?.shape.kind === 'curve' ? edge.shape.through[4] : undefined;
  if (!piece || !edge || !at) throw new Error('the sample gore has a curved side');
  const step = (index: number) => {
    const to = { x: at.x + 6 * Math.sin(index / 7), y: at.y + 4 * Math.cos(index / 5) };
    const moved = moveThrough(piece, edge.id, 4, to);
    const cut = cutLine(moved);
    if (cut.kind !== 'cut-line') throw new Error(cut.kind);
    return [outlineOf(moved), cut];
  };
  const times = timesOf(step, { times: 2000, warm: 500 });
  return [
    { name: 'drag_step_ms_p50', value: quantile(times, 0.5), unit: 'ms' },
    { name: 'drag_step_ms_p95', value: quantile(times, 0.95), unit: 'ms' },
  ];
}

function asBezier({ p0, p1, p2, p3 }: Cubic): Bezier {
  return new Bezier(p0.x, p0.y, p1.x, p1.y, p2.x, p2.y, p3.x, p3.y);
}

/** Curves a second by both, in turns so that the machine's moods hit both alike; the median round of each. */
function raced(
  curves: readonly Cubic[],
  ours: (curve: Cubic) => unknown,
  theirs: (curve: Cubic) => unknown,
  repeats = 1,
): Pick<Figure, 'value' | 'unit' | 'baseline' | 'ratio'> {
  const speed = (work: (curve: Cubic) => unknown) => {
    const begun = performance.now();
    for (let i = 0; i < repeats; i++) for (const curve of curves) work(curve);
    return (curves.length * repeats * 1000) / (performance.now() - begun);
  };
  speed(ours);
  speed(theirs);
  const [a, b]: [number[], number[]] = [[], []];
  for (let round = 0; round < ROUNDS; round++) {
    a.push(speed(ours));
    b.push(speed(theirs));
  }
  const median = (values: number[]) => values.sort((x, y) => x - y)[Math.floor(values.length / 2)] as number;
  const [value, baseline] = [median(a), median(b)];
  return { value, unit: 'curves/s', baseline, ratio: value / baseline };
}
