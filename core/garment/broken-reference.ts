import type { Garment } from './garment';
import type { Piece } from './piece';
import type { EdgeRef } from './seam';

/** More points on one outline than this are a fault, not a drawing. */
const MOST_POINTS = 2000;

export interface BrokenReference {
  readonly where: string;
  readonly why: 'value' | 'same-id' | 'loose-end';
}

type Trouble = BrokenReference | undefined;

/**
 * The first place of a garment where one part speaks of another that is not there, where two things have one id, or
 * where corners and edges do not make a ring; `undefined` when it all holds together.
 */
export function brokenReference({
  wearer,
  diagrams,
  pieces,
  rings,
  seams = [],
  wholes = [],
  traced = [],
  mockups = [],
  printings = [],
  cuttings = [],
  cloths = [],
  lays = [],
}: Garment): Trouble {
  const diagramIds = new Set(diagrams.map(({ id }) => id));
  const pieceIds = new Set(pieces.map(({ id }) => id));
  return (
    sameId('wearer.sets', wearer.sets) ??
    loose('wearer.currentSetId', !wearer.sets.some(({ id }) => id === wearer.currentSetId)) ??
    sameId('diagrams', diagrams) ??
    first('diagrams', diagrams, ({ knownLengths, scaleFrom, joined, ruled = [] }) => {
      const isLoose = (to: { readonly diagramId: string } | undefined) =>
        to !== undefined && !diagramIds.has(to.diagramId);
      const stray = loose('scaleFrom', isLoose(scaleFrom)) ?? loose('joined', isLoose(joined));
      const lineIds = new Set(ruled.map(({ id }) => id));
      const strayLine = ruled.some(({ squareTo }) => squareTo !== undefined && !lineIds.has(squareTo));
      return sameId('knownLengths', knownLengths) ?? sameId('ruled', ruled) ?? loose('ruled', strayLine) ?? stray;
    }) ??
    sameId('pieces', pieces) ??
    first('pieces', pieces, (one) => brokenPiece(one, diagramIds)) ??
    sameId('rings', rings) ??
    first('rings', rings, ({ levels, members }) => {
      const stray = loose('members', !members.every(({ pieceId }) => pieceIds.has(pieceId)));
      return (
        sameId('levels', levels) ??
        stray ??
        sameId(
          'members',
          members.map(({ pieceId }) => ({ id: pieceId })),
        )
      );
    }) ??
    sameId('seams', seams) ??
    sameId('wholes', wholes) ??
    sameId('traced', traced) ??
    // A piece as it was first drawn may speak of a picture that has been taken away since.
    first('traced', traced, (one) => brokenPiece(one, undefined)) ??
    sameId('mockups', mockups) ??
    first('mockups', mockups, ({ pinned }) => sameId('pinned', pinned)) ??
    sameId('printings', printings) ??
    sameId('cuttings', cuttings) ??
    sameId('cloths', cloths) ??
    first('cloths', cloths, ({ strips }) => sameId('strips', strips)) ??
    loose('lays', !lays.every(({ clothId }) => cloths.some(({ id }) => id === clothId))) ??
    first('seams', seams, ({ one, other }) => loose('one', ![...one, ...other].every((ref) => isThere(ref, pieces))))
  );
}

function isThere({ pieceId, edgeId }: EdgeRef, pieces: readonly Piece[]): boolean {
  return pieces.find(({ id }) => id === pieceId)?.edges.some(({ id }) => id === edgeId) ?? false;
}

function brokenPiece(piece: Piece, diagramIds: ReadonlySet<string> | undefined): Trouble {
  const { corners, edges, darts, notches, labels, fullness = [], diagramId } = piece;
  const straight = edges.every(({ shape }) => shape.kind === 'straight');
  const edgeIds = new Set(edges.map(({ id }) => id));
  const points = edges.reduce(
    (sum, { shape }) => sum + (shape.kind === 'curve' ? shape.through.length : 0),
    corners.length,
  );
  return (
    wrong('edges', edges.length !== corners.length) ??
    wrong('corners', (corners.length === 2 && straight) || points > MOST_POINTS) ??
    sameId('corners', corners) ??
    sameId('edges', edges) ??
    sameId('marks', [...darts, ...notches, ...labels, ...fullness]) ??
    loose('darts', !darts.every(({ edgeId }) => edgeIds.has(edgeId))) ??
    loose('notches', !notches.every(({ edgeId }) => edgeIds.has(edgeId))) ??
    loose('fullness', !fullness.every(({ edgeId }) => edgeIds.has(edgeId))) ??
    loose('diagramId', diagramId !== undefined && diagramIds?.has(diagramId) === false)
  );
}

/** The first trouble inside any of a list, with its number in the list before it. */
function first<Item>(where: string, items: readonly Item[], look: (item: Item) => Trouble): Trouble {
  for (const [index, item] of items.entries()) {
    const trouble = look(item);
    if (trouble) return { ...trouble, where: `${where}.${index}.${trouble.where}` };
  }
  return undefined;
}

function sameId(where: string, items: readonly { readonly id: string }[]): Trouble {
  return new Set(items.map(({ id }) => id)).size < items.length ? { where, why: 'same-id' } : undefined;
}

function loose(where: string, isLoose: boolean): Trouble {
  return isLoose ? { where, why: 'loose-end' } : undefined;
}

function wrong(where: string, isWrong: boolean): Trouble {
  return isWrong ? { where, why: 'value' } : undefined;
}
