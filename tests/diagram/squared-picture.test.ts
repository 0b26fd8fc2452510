import { describe, expect, it } from 'vitest';
import { type DiagramMap, diagramMap, photoToTable, tableToPhoto } from '../../core/diagram/diagram-map';
import { flatToPhoto, planSquaredPicture, shownBox } from '../../core/diagram/squared-picture';
import type { Diagram } from '../../core/garment/diagram';
import { seenBy } from './camera';
import { sampleDiagram, set } from './sample-diagram';

function mapOf(diagram: Diagram): DiagramMap {
  const map = diagramMap(diagram, set);
  if (map.kind !== 'map') throw new Error(map.why);
  return map;
}

/** A page of 190 by 260 seen so far from the side that the horizon runs through the picture. */
function acrossTheTable(degrees: number) {
  const see = seenBy({
    focalPx: 1200,
    centre: { x: 1000, y: 1300 },
    tilt: [degrees, 0, 0],
    distance: 330,
    lookAt: { x: 95, y: 130 },
  });
  const page = (x: number, y: number) => see({ x, y });
  return sampleDiagram({ corners: [page(0, 0), page(190, 0), page(190, 260), page(0, 260)] });
}

describe('planSquaredPicture', () => {
  it('leaves a flat picture its own pixels', () => {
    const diagram = sampleDiagram({ placedAt: { x: 40, y: -70 } });
    const plan = planSquaredPicture(diagram, mapOf(diagram), { mostPx: 12e6 });
    expect(plan).toMatchObject({ width: 2000, height: 2600, origin: { x: 40, y: -70 } });
    const at = plan && flatToPhoto(plan, { x: 311, y: 702 });
    expect(at).toEqual({ x: expect.closeTo(311, 6), y: expect.closeTo(702, 6) });
  });

  it('keeps to the pixels it may have, and puts each where the table says', () => {
    const diagram = sampleDiagram({
      corners: [
        { x: 210, y: 260 },
        { x: 1790, y: 220 },
        { x: 1740, y: 2380 },
        { x: 170, y: 2330 },
      ],
    });
    const map = mapOf(diagram);
    const plan = planSquaredPicture(diagram, map, { mostPx: 0.5e6 });
    if (!plan) throw new Error('nothing to show');
    expect(plan.width * plan.height).toBeLessThanOrEqual(0.5e6);
    expect(plan.width * plan.height).toBeGreaterThan(0.49e6);
    const table = { x: plan.origin.x + 123 * plan.mmPerPx.across, y: plan.origin.y + 456 * plan.mmPerPx.down };
    const wanted = tableToPhoto(map, table);
    const found = flatToPhoto(plan, { x: 123, y: 456 });
    expect(found?.x).toBeCloseTo(wanted?.x ?? Number.NaN, 6);
    expect(found?.y).toBeCloseTo(wanted?.y ?? Number.NaN, 6);
  });

  it.each([40, 55, 62, 72])('always shows the whole rectangle, at a tilt of %d degrees too', (degrees) => {
    const diagram = acrossTheTable(degrees);
    const map = mapOf(diagram);
    const box = shownBox(diagram, map);
    const [across, down] = [map.plane.across * map.across, map.plane.down * map.down];
    expect(box?.minX).toBeLessThanOrEqual(1e-6);
    expect(box?.minY).toBeLessThanOrEqual(1e-6);
    expect(box?.maxX).toBeGreaterThanOrEqual(across - 1e-6);
    expect(box?.maxY).toBeGreaterThanOrEqual(down - 1e-6);
    expect(box?.maxY).toBeLessThanOrEqual(1.6 * down + 1e-6);
  });

  it('shows nothing when the rectangle lies outside the picture', () => {
    const diagram = sampleDiagram({
      corners: [
        { x: 5100, y: 200 },
        { x: 5900, y: 220 },
        { x: 5880, y: 1300 },
        { x: 5090, y: 1280 },
      ],
    });
    expect(shownBox(diagram, mapOf(diagram))).toBeUndefined();
    expect(planSquaredPicture(diagram, mapOf(diagram), { mostPx: 1e6 })).toBeUndefined();
  });
});

describe('the horizon', () => {
  it('has nothing beyond it: neither a place on the table nor, behind the camera, one in the picture', () => {
    const diagram = acrossTheTable(62);
    const map = mapOf(diagram);
    const [, , bottomRight] = diagram.squareUp.kind === 'rectangle' ? diagram.squareUp.corners : [];
    expect(bottomRight && photoToTable(map, bottomRight)).toBeDefined();
    const seen = [0, 2600].map((y) => photoToTable(map, { x: 1000, y }));
    expect(seen.filter((place) => place === undefined)).toHaveLength(1);
    const far = [-40, 40].map((times) => tableToPhoto(map, { x: 95, y: times * 500 }));
    expect(far.filter((place) => place === undefined)).toHaveLength(1);
  });
});
