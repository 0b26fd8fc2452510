/** Where two lines of a printed grid cross, to part of a pixel. */
import type { Point } from '../geometry/point';
import { fittedBow } from './curl-side';
import type { Grey } from './grey';
import type { Crossing } from './grid-lattice';
import { type SquaresMap, squaresToPhoto } from './grid-map';
import { foundAlong } from './page-side';

/**
 * A crossing where its two lines, each fitted along both arms, meet; `undefined` where a line is not seen. Close beside
 * another line a `fine` look keeps the two apart.
 */
export function crossingSeen(grey: Grey, crossing: Crossing, map: SquaresMap, line?: 'fine'): Crossing | undefined {
  const { column, row } = crossing;
  const onMap = squaresToPhoto(map, { x: column, y: row });
  const shift = { x: crossing.at.x - onMap.x, y: crossing.at.y - onMap.y };
  const near = (dx: number, dy: number): Point => {
    const at = squaresToPhoto(map, { x: column + dx, y: row + dy });
    return { x: at.x + shift.x, y: at.y + shift.y };
  };
  const arm = 0.42;
  const level = lineThrough(grey, near(-arm, 0), near(arm, 0), line);
  const upright = lineThrough(grey, near(0, -arm), near(0, arm), line);
  if (!(level && upright)) return undefined;
  const [p, q] = [level, upright];
  const det = p.dx * q.dy - p.dy * q.dx;
  const t = ((q.x - p.x) * q.dy - (q.y - p.y) * q.dx) / det;
  const at = { x: p.x + t * p.dx, y: p.y + t * p.dy };
  const size = Math.min(Math.hypot(p.dx, p.dy), Math.hypot(q.dx, q.dy));
  return Math.hypot(at.x - crossing.at.x, at.y - crossing.at.y) < 0.08 * size ? { column, row, at } : undefined;
}

/** The printed line near the run from one place to another; the other line's own darkness is passed over. */
function lineThrough(grey: Grey, from: Point, to: Point, line?: 'fine') {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const soft = line === 'fine' ? 1 : Math.min(Math.max(1.5, length / 40), 4);
  const reach = line === 'fine' ? Math.max(2, length / 24) : Math.max(3, length / 12);
  const search = { mark: 'line', reach, soft, stations: 24 } as const;
  const found = foundAlong(grey, { from, to, bow: [0] }, search);
  const seen = found.filter(({ along, contrast }) => contrast > 0.02 && Math.abs(along - 0.5) * length > 2 * soft);
  const fit = fittedBow(seen, 1, 0.3);
  if (!fit || seen.length < 6) return undefined;
  const [middle, lean] = [fit.bow[0] as number, fit.bow[1] as number];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const [nx, ny] = [dy / length, -dx / length];
  return {
    x: from.x + nx * (middle - lean),
    y: from.y + ny * (middle - lean),
    dx: dx + nx * 2 * lean,
    dy: dy + ny * 2 * lean,
  };
}
