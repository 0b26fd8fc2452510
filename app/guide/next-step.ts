import type { Finding } from '../../core/check/before-you-cut';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { Edge, Piece } from '../../core/garment/piece';
import { roomOf } from '../state/findings-store';
import { type Chosen, chosenAt, type Room } from '../state/table-store';

export type NextStepName =
  | 'picture'
  | 'square-up'
  | 'known-length'
  | 'second-length'
  | 'measures'
  | 'trace'
  | 'drawn-as'
  | 'fold-edge'
  | 'allowance'
  | 'waist-edge'
  | 'grain'
  | 'pair'
  | 'ring'
  | 'curved-waist'
  | 'opening'
  | 'mock-up'
  | 'carry'
  | 'cloth'
  | 'lay'
  | 'pages'
  | 'proof'
  | 'settle'
  | 'cut';

/** The one thing to do next, the room it is done in, and what is to lie chosen there. */
export interface NextStep {
  readonly name: NextStepName;
  readonly room: Room;
  readonly chosen?: Chosen;
}

interface Step {
  readonly name: NextStepName;
  readonly room: Room;
  /** What to choose for it, `true` where nothing need be, or nothing at all where it is not due. */
  readonly due: (garment: Garment, open: readonly Finding[]) => Chosen | boolean | undefined;
}

/** Due while one of these is said of the garment; its place is what is chosen. */
const said =
  (...kinds: readonly Finding['kind'][]): Step['due'] =>
  (_, open) => {
    const finding = open.find(({ kind }) => kinds.includes(kind));
    return finding && chosenAt(finding.place);
  };

/** The first piece that is cut of which this holds. */
const pieceWhere =
  (holds: (piece: Piece) => boolean): Step['due'] =>
  (garment) => {
    const piece = cutPieces(garment).find(holds);
    return piece && { kind: 'piece', pieceId: piece.id };
  };

/** An edge of which it is still to be said what is allowed on it. */
const lacksAllowance = ({ role, allowance }: Edge) => role !== 'fold' && allowance === undefined;

function edgeLackingAllowance(garment: Garment): Chosen | undefined {
  for (const { id, drawnAs, edges } of cutPieces(garment)) {
    const edge = drawnAs === 'included' ? undefined : edges.find(lacksAllowance);
    if (edge) return { kind: 'edge', pieceId: id, edgeId: edge.id };
  }
  return undefined;
}

/** The way from a picture to the cut cloth, in the order in which each thing can be done. */
const way: readonly Step[] = [
  {
    name: 'picture',
    room: 'diagram',
    due: ({ diagrams, pieces }) => diagrams.length === 0 && pieces.length === 0,
  },
  { name: 'square-up', room: 'diagram', due: said('not-squared-up') },
  { name: 'known-length', room: 'diagram', due: said('no-known-length', 'shared-scale-missing') },
  { name: 'measures', room: 'wearer', due: said('known-length-needs-measure') },
  { name: 'second-length', room: 'diagram', due: said('one-known-length', 'one-direction') },
  { name: 'measures', room: 'wearer', due: said('measure-needed') },
  { name: 'trace', room: 'draft', due: (garment) => cutPieces(garment).length === 0 },
  { name: 'drawn-as', room: 'draft', due: said('drawn-as-not-known') },
  {
    name: 'fold-edge',
    room: 'draft',
    due: pieceWhere(({ cut, edges }) => cut.how === 'fold' && !edges.some(({ role }) => role === 'fold')),
  },
  { name: 'allowance', room: 'draft', due: edgeLackingAllowance },
  { name: 'grain', room: 'draft', due: said('no-grain') },
  {
    name: 'pair',
    room: 'seams',
    due: (garment) =>
      !garment.seams?.length && cutPieces(garment).some(({ edges }) => edges.some(({ role }) => role === 'seam')),
  },
  { name: 'ring', room: 'fit', due: said('no-ring') },
  { name: 'waist-edge', room: 'draft', due: said('no-waist-edge') },
  { name: 'curved-waist', room: 'fit', due: said('straight-waist') },
  {
    name: 'opening',
    room: 'fit',
    due: said('no-opening'),
  },
  { name: 'carry', room: 'mockup', due: said('pinned-not-carried') },
  { name: 'mock-up', room: 'mockup', due: ({ mockups }) => !mockups?.length },
  { name: 'cloth', room: 'cloth', due: ({ cloths }) => !cloths?.length },
  { name: 'lay', room: 'cloth', due: ({ lays }) => !lays?.length },
  { name: 'pages', room: 'paper', due: ({ printings }) => !printings?.length },
  { name: 'proof', room: 'paper', due: said('scale-not-proved') },
];

/** The first thing on the way that is due and not put off; then what is still open; then the list, and the shears. */
export function nextStep(garment: Garment, open: readonly Finding[], later: readonly NextStepName[] = []): NextStep {
  for (const { name, room, due } of way) {
    const chosen = !later.includes(name) && due(garment, open);
    if (chosen) return { name, room, ...(chosen !== true && { chosen }) };
  }
  const [finding] = later.includes('settle') ? [] : open.toSorted((a, b) => weigh(a) - weigh(b));
  if (finding) return { name: 'settle', room: roomOf(finding), chosen: chosenAt(finding.place) };
  return { name: 'cut', room: 'check' };
}

function weigh({ weight }: Finding): number {
  return weight === 'stop' ? 0 : 1;
}
