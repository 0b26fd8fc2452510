import { clothTask } from '../core/cloth/cloth-task';
import { layFaults } from '../core/cloth/lay-check';
import { laidFor } from '../core/cloth/lay-search';
import { seededRandom } from '../core/cloth/seeded-random';
import { placedOutline } from '../core/cloth/stance-outline';
import { beginTouching, touchingPlace } from '../core/cloth/touching';
import { inches } from '../core/units/inch';
import type { Figure } from './figure';
import { sampleGarment } from './sample-garment';
import { quantile, timesOf } from './timing';

/** How near counts on a canvas that shows 2 m on 1,200 pixels, with a finger. */
const REACH = 37;

/**
 * One step of a drag in the Cloth room, 12 gores of 40 points lying as they were laid: one goes right over the cloth and
 * settles against whatever it passes. No-fit areas are made when a neighbour first comes near, so the steps have them in.
 */
export function layTouchFigures(): Figure[] {
  const { pieces } = sampleGarment(12);
  const cloth = {
    id: 'c',
    name: 'Cloth',
    width: inches(45),
    selvedge: inches(0.5),
    folded: 'open',
    nap: 'none',
    flaws: [],
  } as const;
  const made = clothTask({ pieces, strips: [] }, cloth, { grain: 'straight', tolerance: 0.5 });
  if (made.kind !== 'task') throw new Error('the gores go on the cloth');
  const { task } = made;
  const lay = laidFor(task, { steps: 3, random: seededRandom(1) });
  if (!lay) throw new Error('the gores were laid');
  const shown = lay.placed.flatMap((place) => {
    const piece = task.toLay.find(({ id }) => id === place.id);
    return piece ? [{ place, ring: placedOutline(piece, place) }] : [];
  });
  const moving = shown[5];
  if (!moving) throw new Error('there are twelve');
  const begin = () =>
    beginTouching({
      ring: moving.ring,
      others: shown.filter((one) => one !== moving).map(({ ring }) => ring),
      across: task.ground.across,
    });
  const press = timesOf(begin, { times: 20, warm: 3 });
  const drags = Array.from({ length: 5 }, begin);
  const steps = 300;
  const place = (index: number) => {
    const t = ((index % steps) / steps) * 2 * Math.PI;
    return { x: (lay.length / 2) * (1 - Math.cos(t)), y: 200 + 150 * Math.sin(9 * t) };
  };
  const touching = timesOf(
    (index) => {
      const drag = drags[Math.floor(index / steps)];
      if (drag) touchingPlace(drag, place(index), REACH);
    },
    { times: (drags.length - 1) * steps, warm: steps },
  );
  const checking = timesOf(
    (index) => {
      const placed = lay.placed.map((one) => (one === moving.place ? { ...one, at: place(index) } : one));
      layFaults(task, { ...lay, placed });
    },
    { times: 200, warm: 40 },
  );
  return [
    { name: 'lay_snap_press_ms_p95', value: quantile(press, 0.95), unit: 'ms' },
    { name: 'lay_snap_ms_p50', value: quantile(touching, 0.5), unit: 'ms' },
    { name: 'lay_snap_ms_p95', value: quantile(touching, 0.95), unit: 'ms' },
    { name: 'lay_snap_ms_max', value: Math.max(...touching), unit: 'ms' },
    { name: 'lay_faults_ms_p95', value: quantile(checking, 0.95), unit: 'ms' },
  ];
}
