import { cornersOfSquares } from '../../core/diagram/followed-plane';
import type { Diagram, Quad } from '../../core/garment/diagram';
import { distance } from '../../core/geometry/point';
import { picturesOf } from '../photo/picture-store';
import { say } from '../ui/say';
import { diagramWords } from '../words/diagram';
import { photoWork } from '../workers/photo-workers';
import { beginSearch, endSearch, setCorners } from './corner-search';

const words = diagramWords.square.search;

/** Draws the corners onto the edges or lines seen between them, as one step, and tells how far each moved. */
export function drawToEdges(diagram: Diagram, corners: Quad): Promise<void> {
  const { squareUp } = diagram;
  return followEdges(diagram, corners, squareUp.kind === 'rectangle' && squareUp.followed?.kind === 'sides');
}

/** Follows the sides as they curve, corners included, as one step; she can move what was found. */
export function followSides(diagram: Diagram, corners: Quad): Promise<void> {
  return followEdges(diagram, corners, true);
}

async function followEdges({ id }: Diagram, corners: Quad, curved: boolean): Promise<void> {
  const { photo } = picturesOf(id);
  if (!photo) return;
  const { signal, onProgress, done } = beginSearch(id, 'refine');
  const { key, file } = photo;
  const answer = await photoWork.call('refineCorners', { key, file, corners }, { signal, onProgress });
  done();
  if (answer.kind === 'refined') {
    const by = answer.corners.map((corner, k) => distance(corner, corners[k as 0]));
    endSearch(id, { kind: 'moved', by, corners: answer.corners });
    const followed = curved ? ({ kind: 'sides', through: answer.through } as const) : undefined;
    setCorners(id, { corners: answer.corners, followed }, curved ? words.followLabel : words.refineLabel);
    return;
  }
  if (answer.kind === 'not-refined') endSearch(id, { ...answer, corners });
  else endSearch(id, { kind: answer.kind === 'stopped' ? 'stopped' : 'failed', corners });
}

/** Finds the printed squares within the corners and squares up by all their crossings, as one step. */
export async function followSquares({ id }: Diagram, corners: Quad): Promise<void> {
  const { photo } = picturesOf(id);
  if (!photo) return;
  const { signal, onProgress, done } = beginSearch(id, 'squares');
  const { key, file } = photo;
  const answer = await photoWork.call('findSquares', { key, file, corners }, { signal, onProgress });
  done();
  if (answer.kind === 'squares') {
    const outermost = cornersOfSquares(answer.map);
    endSearch(id, undefined);
    say(words.squaresFound(answer.map));
    setCorners(id, { corners: outermost, followed: { kind: 'squares', map: answer.map } }, words.squaresLabel);
  } else if (answer.kind === 'no-grid') endSearch(id, { ...answer, corners });
  else endSearch(id, { kind: answer.kind === 'stopped' ? 'stopped' : 'failed', corners });
}
