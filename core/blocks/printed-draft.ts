import type { Cut, EdgeRole, Piece } from '../garment/piece';
import { distance, type Point } from '../geometry/point';
import { inches } from '../units/inch';
import type { DraftOptions, PieceName, SeamName } from './draft-names';
import type { DraftQuestion } from './draft-question';
import { draftedPiece } from './drafted-piece';
import { laidBeside } from './lay-beside';

/** One edge of a printed piece, from a named place to the next; smooth through the places in `through`, else straight. */
export interface PrintedEdge<Place extends string> {
  readonly from: Place;
  readonly role: EdgeRole;
  readonly name?: SeamName;
  readonly through?: readonly Place[];
}

export interface PrintedPiece<Place extends string> {
  readonly name: PieceName;
  readonly number?: number;
  readonly cut: Cut;
  /** Clockwise to the eye. */
  readonly edges: readonly PrintedEdge<Place>[];
  readonly grain: readonly [Place, Place];
}

/** A draft as a plate prints it: places by two figures, across and down, and lengths between them. */
export interface PrintedDraft<Place extends string> {
  readonly places: Readonly<Record<Place, readonly [across: number, down: number]>>;
  /** How large one printed unit is (mm): an inch, a nail, a division of a proportional rule; it may differ across and down. */
  readonly unit: { readonly across: number; readonly down: number };
  readonly pieces: readonly PrintedPiece<Place>[];
  /** Lengths printed beside the lines, in the same units. */
  readonly stated?: readonly { readonly from: Place; readonly to: Place; readonly length: number }[];
  /** Places given twice, by a figure and by a sentence. */
  readonly twice?: readonly (readonly [Place, Place])[];
}

/** Printed lengths are asked about when they are off by more than a sixteenth of an inch. */
const PRINTED_MATCH = inches(1 / 16);

/** The places of a printed draft at full size (mm). */
export function printedPlaces<Place extends string>({
  places,
  unit,
}: PrintedDraft<Place>): Readonly<Record<Place, Point>> {
  const full = Object.entries<readonly [number, number]>(places).map(([name, [across, down]]) => [
    name,
    { x: across * unit.across, y: down * unit.down },
  ]);
  return Object.fromEntries(full) as Record<Place, Point>;
}

/** Every figure of a printed draft that another figure of it contradicts. A length of an uneven unit is read down the plate. */
export function printedQuestions<Place extends string>(draft: PrintedDraft<Place>): readonly DraftQuestion[] {
  const places = printedPlaces(draft);
  const clashes = (draft.stated ?? []).flatMap(({ from, to, length }): DraftQuestion[] => {
    const stated = length * draft.unit.down;
    const drawn = distance(places[from], places[to]);
    return Math.abs(stated - drawn) > PRINTED_MATCH ? [{ kind: 'length-clash', from, to, stated, drawn }] : [];
  });
  const doubles = (draft.twice ?? []).map(([one, other]): DraftQuestion => {
    return { kind: 'place-clash', one, other, apart: distance(places[one], places[other]) };
  });
  return [...clashes, ...doubles];
}

/** The pieces of a printed draft, beside one another, drawn as they are printed: clashes are for {@link printedQuestions}. */
export function printedPieces<Place extends string>(
  draft: PrintedDraft<Place>,
  { newId, nameOf }: DraftOptions,
): Piece[] {
  const places = printedPlaces(draft);
  return laidBeside(
    draft.pieces.map(({ name, number, cut, edges, grain: [from, to] }) =>
      draftedPiece({
        newId,
        name: nameOf(name, number),
        cut,
        grain: { from: places[from], to: places[to] },
        edges: edges.map((edge) => ({
          from: places[edge.from],
          role: edge.role,
          ...(edge.name ? { name: nameOf(edge.name) } : {}),
          ...(edge.through
            ? {
                shape: {
                  kind: 'curve' as const,
                  through: edge.through.map((place) => places[place]),
                  leaves: 'free' as const,
                  meets: 'free' as const,
                },
              }
            : {}),
        })),
      }),
    ),
  );
}
