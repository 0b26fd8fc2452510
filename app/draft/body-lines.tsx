import { useCallback } from 'react';
import { type LevelOnPiece, levelsOnPiece } from '../../core/fit/level-lines';
import { waistNeeds } from '../../core/fit/waist-needs';
import type { Garment, Ring } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import { edgeIndex } from '../../core/garment/with-piece';
import { pathAtLength, pathLength, pathStart } from '../../core/geometry/path';
import type { Path } from '../../core/geometry/segment';
import type { ShownIn } from '../../core/units/inch';
import { layPath, writeWords } from '../table/ink';
import { type Paint, Painted } from '../table/painted';
import { canvasColours } from '../ui/canvas-colours';
import { draftWords as words } from '../words/draft';
import { measureNames } from '../words/measures';
import { writeLength } from '../words/written';
import { useRestedGarment } from './rested-garment';

/** Lines shorter than this on the screen are drawn without their words. */
const ROOM_PX = 120;

interface BodyLines {
  readonly levels: readonly LevelOnPiece[];
  readonly waists: readonly { readonly path: Path; readonly length: number }[];
}

/** The levels of the body on the piece in hand, and the curved waist it needs where its own is another. */
export function BodyLinesOf({ pieceId, shownIn }: { readonly pieceId: string; readonly shownIn: ShownIn }) {
  const garment = useRestedGarment();
  const paint = useCallback<Paint>(
    (ink, { px }) => {
      if (!garment) return;
      const lines = bodyLines(garment, pieceId);
      ink.lineWidth = 1.25 * px;
      ink.strokeStyle = canvasColours.inkSoft;
      ink.setLineDash([2 * px, 4 * px]);
      for (const { run } of lines.levels) {
        ink.beginPath();
        layPath(ink, run);
        ink.stroke();
      }
      ink.lineWidth = 2.5 * px;
      ink.strokeStyle = canvasColours.chalkDeep;
      ink.setLineDash([11 * px, 3 * px, 2 * px, 3 * px]);
      for (const { path } of lines.waists) {
        ink.beginPath();
        layPath(ink, path);
        ink.stroke();
      }
      ink.setLineDash([]);
      for (const { run, level, length } of lines.levels) {
        if (length < ROOM_PX * px) continue;
        const told = words.levelLine(measureNames[level.girth], writeLength(length, { shownIn }));
        const colour = canvasColours.inkSoft;
        writeWords(ink, told, { at: pathStart(run), px, sizePx: 13, align: 'left', offset: { x: 10, y: -10 }, colour });
      }
      for (const { path, length } of lines.waists) {
        if (length < ROOM_PX * px) continue;
        const at = pathAtLength(path, pathLength(path) * 0.5).point;
        const told = words.curvedWaist(writeLength(length, { shownIn }));
        writeWords(ink, told, { at, px, sizePx: 13, offset: { x: 0, y: -20 }, colour: canvasColours.chalkDeep });
      }
    },
    [garment, pieceId, shownIn],
  );
  return <Painted paint={paint} />;
}

const remembered = new WeakMap<Garment, Map<string, BodyLines>>();

function bodyLines(garment: Garment, pieceId: string): BodyLines {
  let known = remembered.get(garment);
  if (!known) {
    known = new Map();
    remembered.set(garment, known);
  }
  let lines = known.get(pieceId);
  if (!lines) {
    const ring = garment.rings.find(({ members }) => members.some((member) => member.pieceId === pieceId));
    lines = ring ? ringLines(garment, ring, pieceId) : { levels: [], waists: [] };
    known.set(pieceId, lines);
  }
  return lines;
}

function ringLines(garment: Garment, ring: Ring, pieceId: string): BodyLines {
  const waists = waistNeeds(garment, ring).flatMap((need) => {
    if (need.pieceId !== pieceId || need.kind !== 'needs-curve' || need.settled) return [];
    const path = outlineOf(need.curve.piece).edges[edgeIndex(need.curve.piece, need.edgeId)];
    return path ? [{ path, length: need.curve.length }] : [];
  });
  return { levels: levelsOnPiece(garment, pieceId), waists };
}
