import { sampleGarment } from '../bench/sample-garment';
import { quantile, timesOf } from '../bench/timing';
import { moveThrough } from '../core/garment/move-point';
import { outlineOf } from '../core/garment/outline';
import { pathLength } from '../core/geometry/path';
import { cutLineSoFar } from '../core/seams/cut-line';
import { pieceMiddle } from '../core/drawing/piece-middle';
import { levelLine } from '../core/shaping/level-line';
import { curvedWaist } from '../core/shaping/curved-waist';
import { pieceDrawing } from '../core/drawing/piece-drawing';
import { parallelOf } from '../core/geometry/parallel';
import { selfCrossings } from '../core/geometry/self-crossing';
import { flattenPath } from '../core/geometry/flatten';
export async function main() {
  const g = sampleGarment(6); const p0 = g.pieces[5]!; const e = p0.edges[1]!; const at = (e.shape as any).through[4];
  const mv = (i: number) => moveThrough(p0, e.id, 4, { x: at.x + 5 * Math.sin(i / 9) + i * 1e-6, y: at.y });
  const t = (name: string, f: (i: number) => unknown) => console.log(name, quantile(timesOf(f, { times: 150, warm: 40 }), 0.5).toFixed(3));
  t('outline', (i) => outlineOf(mv(i)));
  t('lengths', (i) => outlineOf(mv(i)).edges.map((x) => pathLength(x)));
  t('parallel', (i) => parallelOf(outlineOf(mv(i)).edges[1]!, 15));
  t('cut', (i) => cutLineSoFar(mv(i)));
  t('middle', (i) => pieceMiddle(mv(i)));
  t('level200', (i) => levelLine(mv(i), 200));
  t('flatten.1', (i) => flattenPath(outlineOf(mv(i)).whole, 0.1));
  t('selfcross', (i) => selfCrossings(outlineOf(mv(i)).whole));
  t('curved', (i) => curvedWaist(mv(i), { waistEdgeId: p0.edges[0]!.id, length: 62, hipDepth: 200 }));
  t('drawing', (i) => pieceDrawing(mv(i)));
  return 0;
}
