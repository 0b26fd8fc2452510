/** A skirt of our own with a band, in whole inches where it can be, so that every length is known without the program. */
import { type Garment, SCHEMA } from '../../core/garment/garment';
import type { Cut, EdgeRole, Notch, Piece } from '../../core/garment/piece';
import type { Seam } from '../../core/garment/seam';
import { inches } from '../../core/units/inch';

type Inches = readonly [x: number, y: number];
type EdgeIs = readonly [name: string, role: EdgeRole];

/** The slant of a side 25 in long that falls 24 in: 7, 24, 25 (Euclid, Elements X, the lemma on square numbers). */
const FRONT_SLANT = 7;
/** And of one a quarter of an inch longer. */
const BACK_SLANT = Math.sqrt(25.25 ** 2 - 24 ** 2);

/**
 * A front on the fold, waist 7 in and side 25 in; a back cut as a pair, waist 6 1/2 in and side 25 1/4 in; a band on the fold,
 * 14 in to the fold. Notches lie 8 and 16 in down the front's side, 8 and 16 1/4 in down the back's: between them, and nowhere
 * else, the back is a quarter of an inch too long. The waists come to 27 in, the band to 28 in.
 */
export function skirtAndBand(): Garment {
  const front = piece(
    'front',
    'Front',
    { how: 'fold', count: 1 },
    [
      [0, 0],
      [7, 0],
      [7 + FRONT_SLANT, 24],
      [0, 25],
    ],
    [
      ['waist', 'waist'],
      ['side', 'seam'],
      ['hem', 'hem'],
      ['fold', 'fold'],
    ],
    [notch('f8', 'front-1', 8), notch('f16', 'front-1', 16)],
  );
  const back = piece(
    'back',
    'Back',
    { how: 'pair', count: 2 },
    [
      [24 + BACK_SLANT, 0],
      [30.5 + BACK_SLANT, 0],
      [30.5 + BACK_SLANT, 25],
      [24, 24],
    ],
    [
      ['waist', 'waist'],
      ['centre back', 'seam'],
      ['hem', 'hem'],
      ['side', 'seam'],
    ],
    [notch('b8', 'back-3', 25.25 - 8), notch('b16', 'back-3', 25.25 - 16.25)],
  );
  const band = piece(
    'band',
    'Band',
    { how: 'fold', count: 1 },
    [
      [8, -8],
      [22, -8],
      [22, -6],
      [8, -6],
    ],
    [
      ['upper edge', 'finished'],
      ['end', 'finished'],
      ['lower edge', 'seam'],
      ['fold', 'fold'],
    ],
    [],
  );
  return {
    schema: SCHEMA,
    id: 'skirt-and-band',
    name: 'Skirt and band',
    made: '2026-03-05',
    shownIn: 'in',
    source: { book: '', page: '', plate: '', year: '', remarks: '' },
    remarks: '',
    wearer: { name: '', sets: [{ id: 'set', date: '2026-03-05', wornOver: '', measures: {} }], currentSetId: 'set' },
    diagrams: [],
    pieces: [front, back, band],
    rings: [{ id: 'ring', name: 'Round', members: [{ pieceId: 'front' }, { pieceId: 'back' }], levels: [] }],
    paper: { size: 'a4', turned: 'upright', margin: 10, overlap: 10, step: 'sixteenth' },
  };
}

function piece(
  id: string,
  name: string,
  cut: Cut,
  corners: readonly Inches[],
  edges: readonly EdgeIs[],
  notches: readonly Notch[],
): Piece {
  return {
    id,
    name,
    cut,
    drawnAs: 'net',
    corners: corners.map(([x, y], i) => ({ id: `${id}-c${i}`, at: { x: inches(x), y: inches(y) } })),
    edges: edges.map(([edgeName, role], i) => ({
      id: `${id}-${i}`,
      name: edgeName,
      role,
      shape: { kind: 'straight' },
      allowance: role === 'fold' ? 0 : inches(0.5),
    })),
    darts: [],
    notches,
    labels: [],
    remarks: '',
  };
}

function notch(id: string, edgeId: string, alongIn: number): Notch {
  return { id, edgeId, along: inches(alongIn), count: 1 };
}

/** Front to back at the side. */
export const sideSeam: Seam = {
  id: 'side',
  name: '',
  one: [{ pieceId: 'front', edgeId: 'front-1' }],
  other: [{ pieceId: 'back', edgeId: 'back-3' }],
  ease: 0,
  way: 'opposite',
};

/** The back to its own mirror image. */
export const centreBackSeam: Seam = {
  ...sideSeam,
  id: 'centre-back',
  one: [{ pieceId: 'back', edgeId: 'back-1' }],
  other: [{ pieceId: 'back', edgeId: 'back-1' }],
  way: 'same',
};

/** The waists of front and back, each twice, to the lower edge of the band. */
export const bandSeam: Seam = {
  ...sideSeam,
  id: 'band',
  one: [
    { pieceId: 'front', edgeId: 'front-0', times: 2 },
    { pieceId: 'back', edgeId: 'back-0', times: 2 },
  ],
  other: [{ pieceId: 'band', edgeId: 'band-2', times: 2 }],
};
