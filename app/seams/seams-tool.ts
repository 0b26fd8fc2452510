import { isGuide } from '../../core/garment/cut-pieces';
import { type EdgeRef, isOwnMirror } from '../../core/garment/seam';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { useGarment } from '../state/garment-store';
import { hitEdge } from '../table/hit-edge';
import type { PointerAt, Tool } from '../table/tool';
import { say } from '../ui/say';
import { seamsWords as words } from '../words/seams';
import { edgeName } from './seam-names';
import { seamWith } from './seam-sums';
import { openSeam, pickEdge, rollTo, trySeam, useSeams } from './seams-store';
import { alongAt } from './side-runs';

/** A drag along the first side walks the second along it; a press takes up a seam, or edges one after another. */
export function seamsTool(): Tool {
  let over = false;
  return {
    get cursor() {
      return over ? 'pointer' : 'default';
    },
    hover(at) {
      over = at !== undefined && edgeAt(at) !== undefined;
    },
    press(at) {
      const walk = walkInHand();
      const from = useSeams.getState().along;
      const begun = walk && alongAt(walk.one, at.world, from);
      if (!walk || !begun || begun.off > at.reach * 1.5) return undefined;
      const roll = ({ world }: PointerAt) => {
        const found = alongAt(walk.one, world, useSeams.getState().along);
        if (found) rollTo(found.along);
      };
      return { move: roll, end: roll, cancel: () => rollTo(from) };
    },
    tap(at) {
      const edge = edgeAt(at);
      if (edge) pressEdge(edge);
    },
    key({ key }) {
      const { trying, seamId, picked } = useSeams.getState();
      if (key !== 'Escape') return false;
      if (trying) trySeam(undefined);
      else if (seamId !== undefined || picked.length > 0) openSeam(undefined);
      else return false;
      return true;
    },
  };
}

/** Takes up the seam of an edge, unless a partner is being looked for; else takes the edge as one to be paired. */
export function pressEdge(edge: EdgeRef): void {
  const { garment } = useGarment.getState();
  const { picked, trying } = useSeams.getState();
  if (!garment || trying) return;
  const seam = seamWith(garment, edge);
  if (seam && picked.length !== 1) {
    openSeam(seam.id);
    return;
  }
  pickEdge(edge);
  const [first, second] = useSeams.getState().picked;
  if (first && second) say(words.bothPicked(edgeName(garment, first), edgeName(garment, second)));
  else if (first) say(words.nowSecond(edgeName(garment, first)));
}

function walkInHand(): SeamWalk | undefined {
  const { garment } = useGarment.getState();
  const { seamId, trying } = useSeams.getState();
  const seam = garment?.seams?.find(({ id }) => id === seamId);
  return garment && seam && !trying && !isOwnMirror(seam) ? walkOfSeam(garment, seam) : undefined;
}

/** The nearest edge of any piece within reach that can be sewn. */
function edgeAt({ world, reach }: PointerAt): EdgeRef | undefined {
  const { garment } = useGarment.getState();
  let best: EdgeRef | undefined;
  let off = reach;
  for (const piece of garment?.pieces ?? []) {
    if (isGuide(piece)) continue;
    const hit = hitEdge(piece, world, off);
    if (!hit || piece.edges.find(({ id }) => id === hit.edgeId)?.role === 'fold') continue;
    best = { pieceId: piece.id, edgeId: hit.edgeId };
    off = Math.hypot(hit.at.x - world.x, hit.at.y - world.y);
  }
  return best;
}
