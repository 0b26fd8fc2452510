import { useEffect, useMemo, useRef } from 'react';
import { type DiagramMap, diagramMap } from '../../core/diagram/diagram-map';
import { planSquaredPicture, type SquaredPicturePlan, shownBox } from '../../core/diagram/squared-picture';
import type { NotSquared } from '../../core/diagram/squared-plane';
import type { Diagram } from '../../core/garment/diagram';
import type { MeasureSet } from '../../core/garment/measure';
import { MOST_QUICK_PX, MOST_WORKING_PX } from '../workers/photo-calls';
import { type FlatPlans, flattenPhoto, leaveFlattening } from './flatten-photo';
import { ensurePhoto } from './open-photo';
import type { LaidPicture } from './picture-shape';
import { type Pictures, usePictures } from './picture-store';

export interface DiagramPictures {
  readonly pictures: Pictures;
  /** How the picture lies on the table, or why it cannot. */
  readonly map: DiagramMap | NotSquared;
  /** The picture as it was taken, in a world of its own pixels. */
  readonly asTaken: LaidPicture | undefined;
  /** The picture laid flat, on the table. */
  readonly laidFlat: LaidPicture | undefined;
  /** Makes the flat picture once more, after it was stopped. */
  flattenAgain(): void;
}

const none: Pictures = {};

/**
 * The pictures of a diagram, opened when they are first asked for and laid flat again whenever the diagram changes in a
 * way that can be seen. Known lengths only stretch what is there already.
 */
export function useDiagramPictures(diagram: Diagram, set: MeasureSet, among: readonly Diagram[]): DiagramPictures {
  const pictures = usePictures((state) => state.byDiagram[diagram.id] ?? none);
  const map = useMemo(() => diagramMap(diagram, set, among), [diagram, set, among]);
  const plans = useMemo(() => flatPlans(diagram, map), [diagram, map]);
  const key = plans?.key;
  const { id } = diagram;
  const { photo, flat } = pictures;

  useEffect(() => {
    void ensurePhoto(diagram);
  }, [diagram]);

  const latest = useRef(plans);
  useEffect(() => {
    latest.current = plans;
  }, [plans]);

  useEffect(() => {
    if (!photo) return;
    if (key === undefined || !latest.current) {
      leaveFlattening(id);
      return;
    }
    const shown = usePictures.getState().byDiagram[id]?.flat;
    if (shown?.quality === 'full' && key === shown.key) return;
    flattenPhoto(id, latest.current);
    return () => leaveFlattening(id);
  }, [id, photo, key]);

  const asTaken = useMemo(
    () => photo && { levels: photo.levels, box: { minX: 0, minY: 0, maxX: photo.widthPx, maxY: photo.heightPx } },
    [photo],
  );
  const laidFlat = useMemo(() => {
    const box = map.kind === 'map' ? shownBox(diagram, map) : undefined;
    return flat && box && { levels: flat.levels, box };
  }, [flat, diagram, map]);

  return {
    pictures,
    map,
    asTaken,
    laidFlat,
    flattenAgain: () => plans && flattenPhoto(id, plans),
  };
}

function flatPlans(diagram: Diagram, map: DiagramMap | NotSquared): FlatPlans | undefined {
  if (map.kind !== 'map') return undefined;
  const full = planSquaredPicture(diagram, map, { mostPx: MOST_WORKING_PX });
  const quick = planSquaredPicture(diagram, map, { mostPx: MOST_QUICK_PX });
  return full && quick && { key: planKey(diagram, map, full), full, quick };
}

/** What the pixels of the flat picture depend on; where it lies and how large is not among it. */
function planKey(
  { squareUp, quarterTurns, focalPx }: Diagram,
  { joint, across, down }: DiagramMap,
  { width, height }: SquaredPicturePlan,
): string {
  // A picture that is laid aslant cannot be stretched across and down afterwards.
  const aslant = joint && [joint.onto.a, joint.onto.b, across / down].map((each) => Number(each.toPrecision(7)));
  return JSON.stringify([width, height, quarterTurns, focalPx, squareUp, aslant]);
}
