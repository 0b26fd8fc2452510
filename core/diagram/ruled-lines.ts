/** Lines that she says are straight, or square to one another: how far off each lies once the picture is squared up. */
import type { Diagram, RuledLine } from '../garment/diagram';
import { distance, type Point } from '../geometry/point';
import { type OffOver, type OffSquare, offSquare, straightness } from '../picture/page-true';
import { type DiagramMap, photoToTable } from './diagram-map';

/** How true one of them lies, in mm at full size. */
export interface RuledTruth {
  readonly id: string;
  /** From its first place to its last. */
  readonly length: number;
  /** `undefined` where only its ends are known. */
  readonly straight: OffOver | undefined;
  /** `undefined` where it is said to be square to none. */
  readonly square: OffSquare | undefined;
}

/** Each line at full size, in order; one that reaches beyond the horizon is left out. */
export function laidLines(
  { ruled = [] }: Diagram,
  map: DiagramMap,
): { readonly line: RuledLine; readonly places: readonly Point[] }[] {
  return ruled.flatMap((line) => {
    const places = line.places.flatMap((place) => photoToTable(map, place) ?? []);
    return places.length === line.places.length ? [{ line, places }] : [];
  });
}

export function ruledTruths(diagram: Diagram, map: DiagramMap): RuledTruth[] {
  const laid = laidLines(diagram, map);
  return laid.map(({ line: { id, squareTo }, places }) => {
    const other = laid.find(({ line }) => line.id === squareTo);
    const [first, last] = [places[0] as Point, places[places.length - 1] as Point];
    return {
      id,
      length: distance(first, last),
      straight: straightness(places),
      square: other && offSquare(places, other.places),
    };
  });
}
