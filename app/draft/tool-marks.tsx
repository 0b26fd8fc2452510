import { useCallback } from 'react';
import { pathAtLength, pathLength } from '../../core/geometry/path';
import type { TablePoint } from '../../core/geometry/point';
import { line, type Path } from '../../core/geometry/segment';
import type { ShownIn } from '../../core/units/inch';
import { layPath, writeWords } from '../table/ink';
import { type Paint, Painted } from '../table/painted';
import { canvasColours } from '../ui/canvas-colours';
import { writeLength } from '../words/written';
import { useDraft } from './draft-store';
import type { Snapped } from './snap';
import { canClose, ONE_TAP, pathsOf, type Trace } from './trace';

/** What the tools show while they work: the trace so far, the line of a mark being put, where the pointer snaps. */
export function ToolMarks({ shownIn }: { readonly shownIn: ShownIn }) {
  const trace = useDraft((draft) => draft.trace);
  const tracing = useDraft((draft) => draft.mode === 'trace');
  // A pointer that holds to nothing leaves no mark, unless an edge is being drawn to it.
  const pointer = useDraft((draft) =>
    draft.mode === 'trace' || draft.pointer?.to !== 'nothing' ? draft.pointer : undefined,
  );
  const way = useDraft((draft) => (draft.mode === 'trace' ? draft.way : undefined));
  const stroke = useDraft((draft) => draft.stroke);
  const paint = useCallback<Paint>(
    (ink, { px }) => {
      if (tracing) paintTrace(ink, trace, { pointer: pointer?.at, way }, shownIn, px);
      if (stroke) paintStroke(ink, stroke.from, stroke.to, shownIn, px);
      if (pointer) paintSnap(ink, pointer, px);
    },
    [tracing, trace, pointer, way, stroke, shownIn],
  );
  return <Painted paint={paint} />;
}

function paintTrace(
  ink: CanvasRenderingContext2D,
  trace: Trace,
  { pointer, way }: { readonly pointer: TablePoint | undefined; readonly way: readonly TablePoint[] | undefined },
  shownIn: ShownIn,
  px: number,
): void {
  const paths = way ? [...pathsOf(trace, undefined), wayPath(way)] : pathsOf(trace, pointer);
  ink.strokeStyle = canvasColours.chalk;
  ink.lineJoin = 'round';
  ink.lineWidth = 2.25 * px;
  paths.forEach((path, index) => {
    const drawing = index === paths.length - 1 && pointer !== undefined;
    ink.setLineDash(drawing ? [7 * px, 4 * px] : []);
    ink.beginPath();
    layPath(ink, path);
    ink.stroke();
  });
  ink.setLineDash([]);
  trace.forEach(({ at, kind }, index) => {
    const closing = index === 0 && canClose(trace);
    const r = (closing ? 8 : 5) * px;
    ink.beginPath();
    if (kind === 'corner') ink.rect(at.x - r, at.y - r, 2 * r, 2 * r);
    else ink.arc(at.x, at.y, r, 0, 2 * Math.PI);
    ink.fillStyle = closing ? canvasColours.chalkPale : canvasColours.sheet;
    ink.fill();
    ink.strokeStyle = canvasColours.chalkDeep;
    ink.lineWidth = 2 * px;
    ink.stroke();
  });
  const last = paths.at(-1);
  if (!last || !pointer) return;
  const length = pathLength(last);
  if (length < ONE_TAP) return;
  const { point, tangent } = pathAtLength(last, length / 2);
  // Beside the line and not on it, further off where the words lie across.
  writeLive(ink, length, shownIn, px, point, { x: tangent.dy * 46, y: -Math.abs(tangent.dx) * 18 });
}

/** A way as a path, to be drawn and measured like the others. */
function wayPath(way: readonly TablePoint[]): Path {
  return way.slice(1).map((to, index) => line(way[index] as TablePoint, to));
}

function writeLive(
  ink: CanvasRenderingContext2D,
  length: number,
  shownIn: ShownIn,
  px: number,
  at: TablePoint,
  offset: TablePoint,
): void {
  writeWords(ink, writeLength(length, { shownIn }), {
    at,
    px,
    sizePx: 17,
    colour: canvasColours.chalkDeep,
    offset,
  });
}

function paintStroke(
  ink: CanvasRenderingContext2D,
  from: TablePoint,
  to: TablePoint,
  shownIn: ShownIn,
  px: number,
): void {
  ink.beginPath();
  ink.moveTo(from.x, from.y);
  ink.lineTo(to.x, to.y);
  ink.strokeStyle = canvasColours.chalk;
  ink.lineWidth = 2.25 * px;
  ink.setLineDash([7 * px, 4 * px]);
  ink.stroke();
  ink.setLineDash([]);
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < ONE_TAP) return;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  writeLive(ink, length, shownIn, px, middle, { x: 46, y: -18 });
}

/**
 * A ring for a point, a cross for the squares, a short cross with dashes for in line, two brackets for a printed line and
 * four for where printed lines meet: told apart without colour.
 */
function paintSnap(ink: CanvasRenderingContext2D, { at, to }: Snapped, px: number): void {
  if (to === 'nothing') return;
  ink.strokeStyle = canvasColours.chalk;
  ink.lineWidth = 1.5 * px;
  ink.beginPath();
  if (to === 'point') ink.arc(at.x, at.y, 10 * px, 0, 2 * Math.PI);
  else if (to === 'ink' || to === 'meeting') layBrackets(ink, at, to === 'meeting' ? 4 : 2, px);
  else {
    const arm = (to === 'grid' ? 9 : 26) * px;
    if (to === 'line') ink.setLineDash([3 * px, 3 * px]);
    ink.moveTo(at.x - arm, at.y);
    ink.lineTo(at.x + arm, at.y);
    ink.moveTo(at.x, at.y - arm);
    ink.lineTo(at.x, at.y + arm);
  }
  ink.stroke();
  ink.setLineDash([]);
}

/** Arcs round a place with gaps between them, so that what is printed there stays in sight. */
function layBrackets(ink: CanvasRenderingContext2D, { x, y }: TablePoint, count: number, px: number): void {
  const r = 11 * px;
  const half = Math.PI / (count === 2 ? 4 : 7);
  for (let i = 0; i < count; i++) {
    const middle = (2 * Math.PI * i) / count + (count === 2 ? 0 : Math.PI / 4);
    ink.moveTo(x + r * Math.cos(middle - half), y + r * Math.sin(middle - half));
    ink.arc(x, y, r, middle - half, middle + half);
  }
}
