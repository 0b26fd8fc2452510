import type { Diagram } from '../../core/garment/diagram';
import { type Garment, SCHEMA } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import type { MeasureSet } from '../../core/garment/measure';
import type { Corner, Edge, Piece } from '../../core/garment/piece';
import { inches } from '../../core/units/inch';
import { demoWords as words } from '../words/demo';
import {
  lindenCorners,
  lindenCornersInPhoto,
  lindenFrame,
  lindenFrameInPhoto,
  lindenHemThrough,
  lindenPhotoSize,
  lindenSideThrough,
} from './linden-panel';

/**
 * The demo garment as it stands after tracing: measured, squared up, scaled from two known lengths, its one panel
 * traced with the straight waist of the plate, two yards and a half of cloth bought, and everything after that still to do.
 */
export function lindenGarment(options: {
  readonly newId: () => string;
  readonly today: string;
  readonly photoId: string;
}): Garment {
  const { newId, today, photoId } = options;
  const set = lindenMeasures(newId(), today);
  const diagram = lindenDiagram(newId, photoId);
  const panel = lindenPanel(newId, diagram.id);
  return {
    schema: SCHEMA,
    id: newId(),
    name: words.garment,
    made: today,
    shownIn: 'in',
    source: { book: words.book, page: '', plate: '14', year: '', remarks: words.sourceRemarks },
    remarks: '',
    wearer: { name: '', sets: [set], currentSetId: set.id },
    diagrams: [diagram],
    pieces: [panel],
    rings: [
      {
        id: newId(),
        name: words.ring,
        members: [{ pieceId: panel.id }],
        levels: [
          { id: newId(), girth: 'waist', depth: { kind: 'length', length: 0 }, ease: inches(0.5) },
          { id: newId(), girth: 'highHip', depth: { kind: 'measure', measure: 'waistToHighHip' }, ease: inches(1) },
          { id: newId(), girth: 'hip', depth: { kind: 'measure', measure: 'waistToHip' }, ease: inches(2) },
        ],
      },
    ],
    traced: [panel],
    cloths: [lindenCloth(newId)],
    paper: { size: 'a4', turned: 'upright', margin: 10, overlap: 10, step: 'sixteenth' },
  };
}

function lindenMeasures(id: string, date: string): MeasureSet {
  const inch = (length: number, depth?: number) =>
    depth === undefined ? { length: inches(length) } : { length: inches(length), depth: inches(depth) };
  return {
    id,
    date,
    wornOver: words.wornOver,
    measures: {
      waist: inch(28),
      highHip: inch(34.5, 4),
      hip: inch(38, 8),
      waistToHighHip: inch(4),
      waistToHip: inch(8),
      waistToKnee: inch(23),
      waistToFloorFront: inch(40),
      waistToFloorSide: inch(40.5),
      waistToFloorBack: inch(40.25),
    },
  };
}

function lindenDiagram(newId: () => string, photoId: string): Diagram {
  const [waistAtFold, waistAtSide, , hemAtFold] = lindenCornersInPhoto;
  return {
    id: newId(),
    name: words.plate,
    photoId,
    ...lindenPhotoSize,
    squareUp: { kind: 'rectangle', corners: lindenFrameInPhoto, sides: { kind: 'not-known' } },
    quarterTurns: 0,
    knownLengths: [
      {
        id: newId(),
        from: waistAtFold,
        to: waistAtSide,
        says: { kind: 'share', measure: 'waist', parts: 1, of: 4, ease: 0 },
      },
      { id: newId(), from: waistAtFold, to: hemAtFold, says: { kind: 'length', length: inches(28) } },
    ],
    placedAt: lindenFrame[0],
  };
}

/** The panel as she would trace it, on the fold, once for the front and once for the back. */
function lindenPanel(newId: () => string, diagramId: string): Piece {
  const corners: Corner[] = lindenCorners.map((at) => ({ id: newId(), at }));
  const edge = (name: string, role: Edge['role'], shape: Edge['shape'], allowance: number): Edge => ({
    id: newId(),
    name,
    role,
    shape,
    allowance: inches(allowance),
  });
  const curve = (through: typeof lindenSideThrough, meets: 'free' | 'square'): Edge['shape'] => ({
    kind: 'curve',
    through,
    leaves: 'free',
    meets,
  });
  return {
    id: newId(),
    name: words.panel,
    cut: { how: 'fold', count: 2 },
    drawnAs: 'net',
    corners,
    edges: [
      edge(words.waist, 'waist', { kind: 'straight' }, 0.5),
      edge(words.side, 'seam', curve(lindenSideThrough, 'free'), 0.75),
      edge(words.hem, 'hem', curve(lindenHemThrough, 'square'), 2),
      edge(words.fold, 'fold', { kind: 'straight' }, 0),
    ],
    darts: [],
    notches: [],
    labels: [],
    grain: { from: { x: inches(3), y: inches(7) }, to: { x: inches(3), y: inches(22) } },
    diagramId,
    remarks: '',
  };
}

/** What she bought for it: two yards and a half, folded as it came from the shop. A placket is cut from it as well. */
function lindenCloth(newId: () => string): GarmentCloth {
  return {
    id: newId(),
    name: words.cloth,
    width: inches(39),
    selvedge: inches(0.5),
    atHand: inches(90),
    folded: 'lengthwise',
    nap: 'none',
    flaws: [],
    strips: [{ id: newId(), name: words.placket, length: inches(20), width: inches(3), count: 1, cut: 'along' }],
    grain: 'straight',
  };
}
