import { isPlace, movedTo, type PlaceKey, pinnedPlace, turned } from '../../core/cloth/lay-by-hand';
import { matchedPlace } from '../../core/cloth/matched-place';
import { beginTouching, touchingPlace } from '../../core/cloth/touching';
import { keepLay } from '../../core/garment/cloth-edits';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth, KeptLay } from '../../core/garment/garment-cloth';
import type { Point } from '../../core/geometry/point';
import { placeInRing } from '../../core/geometry/polygon';
import { inches, type ShownIn } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import type { PointerAt, Tool } from '../table/tool';
import { clothWords as words } from '../words/cloth';
import { useCloth } from './cloth-store';
import { stopLaying } from './laying';
import { currentLay, type Shown, type ShownLay } from './shown-lay';

/** By how much an arrow key moves a piece (mm), alone and with Shift. */
const STEPS: Readonly<Record<ShownIn, readonly [number, number]>> = {
  in: [inches(1 / 8), inches(1)],
  cm: [2, 20],
};

const WAYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** What the tool works on, as it is now. */
export interface Worked {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** Moves, turns and pins pieces on the cloth, or sets the corners of what is drawn on it. */
export function layTool(now: () => Worked): Tool {
  let over = false;
  const under = ({ world }: PointerAt): Shown | undefined =>
    now().lay.shown.findLast(({ ring }) => placeInRing(ring, world) !== 'outside');
  return {
    get cursor() {
      return useCloth.getState().drawing ? 'crosshair' : over ? 'move' : 'default';
    },
    hover(at) {
      over = at !== undefined && under(at) !== undefined;
    },
    press(at) {
      if (useCloth.getState().drawing) return undefined;
      const hit = inHandAt(now(), at) ?? under(at);
      if (!hit) return undefined;
      return dragOf(now, hit, at);
    },
    tap(at) {
      const { drawing } = useCloth.getState();
      if (drawing) useCloth.setState({ drawing: { ...drawing, corners: [...drawing.corners, at.world] } });
      else useCloth.setState({ inHand: undefined });
    },
    key({ key, shift }) {
      const { inHand, drawing } = useCloth.getState();
      if (key === 'Escape') {
        if (!inHand && !drawing) return false;
        useCloth.setState({ inHand: undefined, drawing: undefined });
        return true;
      }
      if (key === 'PageDown' || key === 'PageUp') return chooseNext(now(), key === 'PageDown' ? 1 : -1);
      if (!inHand) return false;
      const worked = now();
      if (key === 't' || key === 'T') turnPlace(worked, inHand);
      else if (key === 'p' || key === 'P') pinPlace(worked, inHand);
      else {
        const way = WAYS[key];
        if (!way) return false;
        const step = STEPS[worked.garment.shownIn][shift ? 1 : 0];
        nudge(worked, inHand, { x: way[0] * step, y: way[1] * step });
      }
      return true;
    },
  };
}

/** The piece in hand goes before one that lies over it. */
function inHandAt({ lay }: Worked, { world }: PointerAt): Shown | undefined {
  const { inHand } = useCloth.getState();
  return lay.shown.find(({ place, ring }) => isPlace(place, inHand) && placeInRing(ring, world) !== 'outside');
}

function dragOf(now: () => Worked, hit: Shown, at: PointerAt) {
  stopLaying();
  const key: PlaceKey = { id: hit.place.id, copy: hit.place.copy };
  const { inHand: before } = useCloth.getState();
  useCloth.setState({ inHand: key });
  const { task, standing } = now().lay;
  const begun = standing?.lay;
  let moving = false;
  const settled = settling(now(), hit);
  return {
    move: ({ world, reach, free }: PointerAt) => {
      if (!task || !begun || standing.changed || hit.place.pinned) return;
      if (!moving) useGarment.getState().beginDrag(words.labels.move);
      moving = true;
      const to = { x: hit.place.at.x + world.x - at.world.x, y: hit.place.at.y + world.y - at.world.y };
      const place = free ? to : settled(to, reach);
      useGarment.getState().drag((garment) => keepLay(garment, movedTo(task, begun, key, place)));
    },
    end: () => {
      if (moving) useGarment.getState().endDrag();
    },
    cancel: () => {
      if (moving) useGarment.getState().cancelDrag();
      else useCloth.setState({ inHand: before });
    },
  };
}

/** Where a dragged piece settles: on the repeat of the cloth, or against the true outlines of what is near. */
function settling({ lay }: Worked, { piece, place, ring }: Shown): (to: Point, reach: number) => Point {
  const { task, laying } = lay;
  const stance = piece.stances[place.stance];
  const { repeat } = task?.ground ?? {};
  if (repeat && stance) return (to) => matchedPlace(piece, stance, repeat, to);
  const { made } = laying;
  const touching = beginTouching({
    ring,
    others: [...lay.shown.flatMap((one) => (one.place === place ? [] : [one.ring])), ...(task?.ground.kept ?? [])],
    across: task?.ground.across ?? 0,
    end: made.kind === 'task' ? made.lengthAtHand : undefined,
    onFold: piece.onFold,
  });
  return (to, reach) => touchingPlace(touching, to, reach);
}

/** Takes the next piece in hand, or the one before. */
function chooseNext({ lay }: Worked, by: 1 | -1): boolean {
  const { shown } = lay;
  if (shown.length === 0) return false;
  const { inHand } = useCloth.getState();
  const at = shown.findIndex(({ place }) => isPlace(place, inHand));
  const next = shown[(at < 0 && by < 0 ? shown.length - 1 : at + by + shown.length) % shown.length];
  if (!next) return false;
  const { id, copy } = next.place;
  useCloth.setState({ inHand: { id, copy } });
  return true;
}

/** Turns the piece in hand to the next way its grain allows. */
export function turnPlace(worked: Worked, key: PlaceKey): void {
  edit(worked, words.labels.turn, (task, lay) => turned(task, lay, key));
}

/** Pins the piece where it lies, or takes the pin out. */
export function pinPlace(worked: Worked, key: PlaceKey): void {
  const isPinned = worked.lay.shown.some(({ place }) => isPlace(place, key) && place.pinned);
  const label = isPinned ? words.labels.unpin : words.labels.pin;
  edit(worked, label, (_, lay) => pinnedPlace(lay, key, isPinned ? 'free' : 'pinned'));
}

function nudge(worked: Worked, key: PlaceKey, { x, y }: Point): void {
  const place = worked.lay.shown.find((one) => isPlace(one.place, key))?.place;
  if (!place || place.pinned) return;
  const at = { x: place.at.x + x, y: place.at.y + y };
  edit(worked, words.labels.move, (task, lay) => movedTo(task, lay, key, at), `nudge ${key.id} ${key.copy}`);
}

function edit(
  { garment, cloth }: Worked,
  label: string,
  change: (task: NonNullable<ShownLay['task']>, lay: KeptLay) => KeptLay,
  merge?: string,
): void {
  stopLaying();
  useGarment.getState().edit(
    label,
    (now) => {
      const current = now.id === garment.id ? currentLay(now, cloth.id) : undefined;
      return current ? keepLay(now, change(current.task, current.lay)) : now;
    },
    merge === undefined ? {} : { merge },
  );
}
