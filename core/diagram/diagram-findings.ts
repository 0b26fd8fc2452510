import type { Diagram } from '../garment/diagram';
import type { FindingBase } from '../garment/finding';
import type { MeasureName, MeasureSet } from '../garment/measure';
import { type DiagramMap, diagramMap } from './diagram-map';
import { pageCheck } from './page-check';
import type { LineMisfit, Scale } from './solve-scale';
import type { NotSquared } from './squared-plane';
import { fullSizeLength } from './stated-length';

/** What can be said against a diagram, with its numbers. Lengths are mm at full size. */
export type DiagramFinding = FindingBase &
  (
    | { readonly kind: 'not-squared-up'; readonly why: NotSquared['why'] }
    | { readonly kind: 'no-known-length' }
    | { readonly kind: 'one-known-length' }
    /** Several, but all one way: nothing checks the other. */
    | { readonly kind: 'one-direction'; readonly direction: 'across' | 'down' }
    | { readonly kind: 'known-length-zero' }
    | { readonly kind: 'known-length-without-line' }
    | { readonly kind: 'known-length-needs-measure'; readonly measure: MeasureName }
    | {
        readonly kind: 'known-length-disagrees';
        readonly states: number;
        readonly measures: number;
        readonly share: number;
        /** Off by more than a careful drawing is. */
        readonly hardlyToScale: boolean;
      }
    /** Across and down need different scales: the picture is stretched, or not drawn to scale. */
    | { readonly kind: 'stretched'; readonly share: number; readonly over: number; readonly slip: number }
    /** Lines that should be straight, or corners that should be square, are off by so much over so much. */
    | { readonly kind: 'page-not-true'; readonly off: number; readonly over: number }
    /** The picture whose scale it has says none, or is not alike. */
    | { readonly kind: 'shared-scale-missing'; readonly diagramId: string }
    /** Fewer than two matching places with the other half, or the other half cannot be laid out. */
    | { readonly kind: 'halves-not-joined'; readonly diagramId: string }
    /** Matching places of the two halves lie so far apart at most. */
    | { readonly kind: 'halves-apart'; readonly diagramId: string; readonly apart: number }
    /** The longest known length is short: a slip in placing its ends grows to `grows` over `over`. */
    | { readonly kind: 'short-known-length'; readonly grows: number; readonly over: number }
  );

/** Disagreement below this is the slip of a pencil; above the second, the diagram is hardly to scale (common practice). */
export const WORTH_A_LOOK = 0.01;
export const HARDLY_TO_SCALE = 0.02;

/** How far the end of a line is placed wrong, in pixels of the picture. */
const SLIP_PX = 1.5;

/** A slip that grows beyond a quarter inch over the whole diagram is worth saying. */
const GROWN_TOO_FAR = 6.35;

/** No page or copier stretches so far, and old plates drawn out of scale reach about a third: beyond it a figure is misread. */
const BEYOND_STRETCH = 0.5;

/** A stretch below this cannot be told from the slip of placing the corners. */
const NO_STRETCH = 0.01;

/** An eighth of an inch over 26 in: what a page, curled too, can be squared up to. */
const TRUE_ENOUGH = 1 / 8 / 26;

/** Halves whose matching places lie further apart than this do not meet: an eighth of an inch. */
const TRUE_ENOUGH_APART = 25.4 / 8;

/** Everything to be said of one diagram. `among` are all the pictures of the garment. */
export function diagramFindings(diagram: Diagram, set: MeasureSet, among: readonly Diagram[] = []): DiagramFinding[] {
  const place = { kind: 'diagram', diagramId: diagram.id } as const;
  const map = diagramMap(diagram, set, among);
  if (map.kind === 'not-squared') return [{ kind: 'not-squared-up', weight: 'stop', place, why: map.why }];
  return [...sayingsFindings(diagram, set, map), ...leaningFindings(diagram, map), ...scaleFindings(diagram, map)];
}

/** What is wrong with a scale taken from another picture, and with the way two halves are joined. */
function leaningFindings(diagram: Diagram, { joint, scaleBy }: DiagramMap): DiagramFinding[] {
  const place = { kind: 'diagram', diagramId: diagram.id } as const;
  const found: DiagramFinding[] = [];
  const { scaleFrom, joined } = diagram;
  if (scaleFrom && scaleBy === 'nothing' && joined?.size !== 'fitted') {
    found.push({ kind: 'shared-scale-missing', weight: 'stop', place, diagramId: scaleFrom.diagramId });
  }
  if (!joined) return found;
  const { diagramId } = joined;
  if (!joint) return [...found, { kind: 'halves-not-joined', weight: 'stop', place, diagramId }];
  const apart = Math.max(...joint.apart);
  if (apart > TRUE_ENOUGH_APART) found.push({ kind: 'halves-apart', weight: 'warn', place, diagramId, apart });
  return found;
}

/** What is wrong with what the known lengths say, each by itself. */
function sayingsFindings(diagram: Diagram, set: MeasureSet, map: DiagramMap): DiagramFinding[] {
  return diagram.knownLengths.flatMap((known): DiagramFinding[] => {
    const place = { kind: 'diagram', diagramId: diagram.id, knownLengthId: known.id } as const;
    const full = fullSizeLength(known.says, set);
    if (full.kind === 'not-positive') return [{ kind: 'known-length-zero', weight: 'stop', place }];
    if (full.kind === 'measure-missing') {
      return [{ kind: 'known-length-needs-measure', weight: 'stop', place, measure: full.measure }];
    }
    const used = map.scale?.lines.some((line) => line.id === known.id);
    return used ? [] : [{ kind: 'known-length-without-line', weight: 'stop', place }];
  });
}

function scaleFindings(diagram: Diagram, map: DiagramMap): DiagramFinding[] {
  const place = { kind: 'diagram', diagramId: diagram.id } as const;
  const { scale } = map;
  const leans = diagram.scaleFrom !== undefined || diagram.joined?.size === 'fitted';
  if (!scale) return leans ? [] : [{ kind: 'no-known-length', weight: 'stop', place }];
  const found: DiagramFinding[] = [];
  if (map.scaleBy !== 'own') return [...disagreeing(diagram, map, scale), ...notTrue(diagram, map)];
  if (scale.lines.length === 1) found.push({ kind: 'one-known-length', weight: 'warn', place });
  else if (!scale.split)
    found.push({ kind: 'one-direction', weight: 'warn', place, direction: mainDirection(diagram, map) });
  found.push(...disagreeing(diagram, map, scale));
  const stretch = stretchFinding(diagram, map, scale);
  if (stretch) found.push(stretch);
  const short = shortLineFinding(diagram, map, scale);
  if (short) found.push(short);
  return [...found, ...notTrue(diagram, map)];
}

function notTrue(diagram: Diagram, map: DiagramMap): DiagramFinding[] {
  const worst = pageCheck(diagram, map)?.worst;
  if (!worst || worst.off <= TRUE_ENOUGH * worst.over) return [];
  return [{ kind: 'page-not-true', weight: 'warn', place: { kind: 'diagram', diagramId: diagram.id }, ...worst }];
}

/** Known lengths that measure otherwise at the scale there is. */
function disagreeing(diagram: Diagram, map: DiagramMap, scale: Scale): DiagramFinding[] {
  // Both ends are placed by eye, each within a slip of its mark.
  const slip = 2 * SLIP_PX * Math.max(map.across, map.down);
  return scale.lines.flatMap((line): DiagramFinding[] => {
    const share = disagreement(line);
    if (share <= WORTH_A_LOOK || Math.abs(line.measures - line.states) <= slip) return [];
    return [
      {
        kind: 'known-length-disagrees',
        weight: 'warn',
        hardlyToScale: share > HARDLY_TO_SCALE,
        place: { kind: 'diagram', diagramId: diagram.id, knownLengthId: line.id },
        states: line.states,
        measures: line.measures,
        share,
      },
    ];
  });
}

/** How far off a line is, as a share of what it states. */
export function disagreement({ states, measures }: LineMisfit): number {
  return Math.abs(measures - states) / states;
}

/** By what share across and down differ, against the proportion of the rectangle. */
export function stretchOf({ across, down }: Scale): number {
  return Math.max(across, down) / Math.min(across, down) - 1;
}

function stretchFinding(diagram: Diagram, map: DiagramMap, scale: Scale): DiagramFinding | undefined {
  // Where the proportion was only the mean of the sides, a difference is the tilt being corrected, not a fault.
  if (!scale.split || map.plane.aspectFrom === 'sides') return undefined;
  const share = stretchOf(scale);
  if (share <= NO_STRETCH) return undefined;
  const over = Math.max(map.plane.across * map.across, map.plane.down * map.down);
  return {
    kind: 'stretched',
    weight: share > BEYOND_STRETCH ? 'stop' : 'warn',
    place: { kind: 'diagram', diagramId: diagram.id },
    share,
    over,
    slip: over * share,
  };
}

function shortLineFinding(diagram: Diagram, map: DiagramMap, scale: Scale): DiagramFinding | undefined {
  const longest = Math.max(...scale.lines.map((line) => line.states));
  const mmPerPx = (map.across + map.down) / 2;
  const over = Math.max(map.plane.across * map.across, map.plane.down * map.down);
  const grows = (SLIP_PX * mmPerPx * over) / longest;
  if (grows <= GROWN_TOO_FAR) return undefined;
  return { kind: 'short-known-length', weight: 'warn', place: { kind: 'diagram', diagramId: diagram.id }, grows, over };
}

function mainDirection(diagram: Diagram, map: DiagramMap): 'across' | 'down' {
  let [across, down] = [0, 0];
  for (const { from, to } of diagram.knownLengths) {
    across += Math.abs(to.x - from.x);
    down += Math.abs(to.y - from.y);
  }
  const upright = across >= down ? 'across' : 'down';
  const sideways = upright === 'across' ? 'down' : 'across';
  return map.plane.aspectFrom !== 'flat' && diagram.quarterTurns % 2 === 1 ? sideways : upright;
}
