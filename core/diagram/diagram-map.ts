import type { Diagram, Joined } from '../garment/diagram';
import type { MeasureSet } from '../garment/measure';
import { transformPoint } from '../geometry/affine';
import { type PhotoPoint, type Point, type TablePoint, vectorBetween } from '../geometry/point';
import { type Joint, jointOf } from './joint';
import { scaleAlike } from './shared-scale';
import { misfitsAt, type Scale, type ScaledLine, solveScale } from './solve-scale';
import { fromPlane, type NotSquared, onPlane, type SquaredPlane, squaredPlane } from './squared-plane';
import { fullSizeLength } from './stated-length';

/** How a picture lies on the table at full size. */
export interface DiagramMap {
  readonly kind: 'map';
  readonly plane: SquaredPlane;
  /** `undefined` while nothing says how large it is; the size on the table is then only a stand-in. */
  readonly scale: Scale | undefined;
  /** Where its scale came from. */
  readonly scaleBy: 'own' | 'shared' | 'joined' | 'nothing';
  /** mm per unit of the flat plane, the stand-in included. */
  readonly across: number;
  readonly down: number;
  /** Where the plane's zero lies, unless it is joined to another picture. */
  readonly placedAt: TablePoint;
  readonly joint?: Joint;
}

/** Without a known length the longer side of the rectangle is taken for this many mm, so that something can be seen. */
export const STAND_IN_SIZE = 500;

/**
 * The map of a picture onto the table, or why there is none. `among` are the pictures of the garment, for one that has its
 * scale from another or is joined to it; one that leads back to itself stands alone.
 */
export function diagramMap(diagram: Diagram, set: MeasureSet, among: readonly Diagram[] = []): DiagramMap | NotSquared {
  return mapWithin(diagram, { set, among, trail: [] });
}

interface Within {
  readonly set: MeasureSet;
  readonly among: readonly Diagram[];
  readonly trail: readonly string[];
}

function mapWithin(diagram: Diagram, within: Within): DiagramMap | NotSquared {
  const plane = squaredPlane(diagram);
  if (plane.kind === 'not-squared') return plane;
  const lines = linesOnPlane(diagram, plane, within.set);
  const shared = sharedScale(diagram, plane, within);
  const own = diagram.scaleFrom ? undefined : solveScale(lines);
  const standIn = STAND_IN_SIZE / Math.max(plane.across, plane.down);
  const base = shared ?? own ?? { across: standIn, down: standIn };
  const joint = diagram.joined && joinedBy(diagram, diagram.joined, plane, { ...base, within });
  const [across, down] = [base.across * (joint?.factor ?? 1), base.down * (joint?.factor ?? 1)];
  const scaleBy = joint?.by ?? (shared ? 'shared' : own ? 'own' : 'nothing');
  const { placedAt } = diagram;
  const scale =
    scaleBy === 'own'
      ? own
      : scaleBy === 'nothing'
        ? undefined
        : ({ kind: 'scale', across, down, split: true, lines: misfitsAt(lines, { across, down }) } as const);
  return { kind: 'map', plane, scale, scaleBy, across, down, placedAt, ...(joint ? { joint: joint.joint } : {}) };
}

/** The picture another one leans on, and how it lies; nothing where there is none, or it leads back. */
function leansOn(diagramId: string, from: Diagram, { trail, ...within }: Within) {
  const source = within.among.find(({ id }) => id === diagramId);
  if (!source || source.id === from.id || trail.includes(source.id)) return undefined;
  const map = mapWithin(source, { ...within, trail: [...trail, from.id] });
  return map.kind === 'map' ? { source, map } : undefined;
}

function sharedScale(diagram: Diagram, plane: SquaredPlane, within: Within) {
  const { scaleFrom } = diagram;
  if (!scaleFrom) return undefined;
  const found = leansOn(scaleFrom.diagramId, diagram, within);
  if (!found?.map.scale) return undefined;
  return scaleAlike(diagram, plane, { by: scaleFrom.by, ...found });
}

interface JoinedBy {
  readonly joint: Joint;
  readonly factor: number;
  /** Where it is made to fit, the scale comes with the joint, if the other picture has one. */
  readonly by: 'joined' | 'nothing' | undefined;
}

function joinedBy(
  diagram: Diagram,
  { diagramId, pairs, size }: Joined,
  plane: SquaredPlane,
  { across, down, within }: { readonly across: number; readonly down: number; readonly within: Within },
): JoinedBy | undefined {
  const found = leansOn(diagramId, diagram, within);
  if (!found) return undefined;
  const places = pairs.flatMap(({ here, there }) => {
    const [place, to] = [onPlane(plane, here), photoToTable(found.map, there)];
    return place && to ? [{ from: { x: across * place.x, y: down * place.y }, to }] : [];
  });
  const joint = jointOf(places, size);
  const by = size === 'own' ? undefined : found.map.scale ? 'joined' : 'nothing';
  return joint && { joint, factor: joint.factor, by };
}

/** A place of the flat plane on the table. */
export function planeToTable({ across, down, placedAt, joint }: DiagramMap, { x, y }: Point): TablePoint {
  const place = { x: across * x, y: down * y };
  return joint ? transformPoint(joint.onto, place) : { x: placedAt.x + place.x, y: placedAt.y + place.y };
}

/** A place of the table on the flat plane. */
export function tableToPlane({ across, down, placedAt, joint }: DiagramMap, point: TablePoint): Point {
  const place = joint ? transformPoint(joint.back, point) : { x: point.x - placedAt.x, y: point.y - placedAt.y };
  return { x: place.x / across, y: place.y / down };
}

/** A place of the picture on the table; `undefined` on the horizon or beyond it. */
export function photoToTable(map: DiagramMap, point: PhotoPoint): TablePoint | undefined {
  const place = onPlane(map.plane, point);
  return place && planeToTable(map, place);
}

/** A place of the table on the picture; `undefined` where the table runs behind the camera. */
export function tableToPhoto(map: DiagramMap, point: TablePoint): PhotoPoint | undefined {
  return fromPlane(map.plane, tableToPlane(map, point));
}

/** The known lengths that say something, as runs on the flat plane. */
function linesOnPlane(diagram: Diagram, plane: SquaredPlane, set: MeasureSet): ScaledLine[] {
  return diagram.knownLengths.flatMap(({ id, from, to, says }) => {
    const [a, b] = [onPlane(plane, from), onPlane(plane, to)];
    const full = fullSizeLength(says, set);
    return a && b && full.kind === 'full-size' ? [{ id, run: vectorBetween(a, b), length: full.length }] : [];
  });
}
