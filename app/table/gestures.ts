import type { Point } from '../../core/geometry/point';
import type { View } from '../state/table-store';
import { type Drag, type PointerAt, type PointerKind, REACH_PX, type Tool } from './tool';
import { beginPinch, type Pinch, panned, pinchedView, type ScaleLimits, toWorld } from './view';

/** A pointer as the screen reports it. */
export interface Contact {
  readonly id: number;
  readonly kind: PointerKind;
  readonly screen: Point;
  readonly free: boolean;
  /** The first button (or a touch), or the one that always moves the table. */
  readonly button: 'main' | 'middle';
}

/** What the gestures work on. */
export interface GestureHost {
  view(): View;
  setView(view: View): void;
  limits(): ScaleLimits;
  tool(): Tool;
  /** Whether every press moves the table, whatever lies under it. */
  handOnly(): boolean;
  /** Whether fingers only move the table because a pen draws. */
  fingersMoveOnly(): boolean;
}

type State =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'tool';
      readonly id: number;
      readonly drag: Drag;
      readonly from: Contact;
      moved: boolean;
      last: Contact;
    }
  | {
      readonly kind: 'pan';
      readonly id: number;
      readonly from: Contact;
      readonly view: View;
      readonly declined: boolean;
      moved: boolean;
    }
  /** A finger that rested: it aims under the magnifier, and presses where it is lifted. */
  | { readonly kind: 'aim'; readonly id: number; readonly from: Contact; last: Contact }
  | { readonly kind: 'pinch'; readonly ids: readonly [number, number]; readonly pinch: Pinch };

/** How far a pointer may tremble before a press becomes a drag, in CSS pixels. */
const SLOP_PX: Readonly<Record<PointerKind, number>> = { mouse: 3, pen: 4, touch: 6 };

/** What the pointer is doing, for the cursor and the magnifier. */
export type Doing = 'nothing' | 'dragging' | 'moving-table';

export type Gestures = ReturnType<typeof createGestures>;

/**
 * The one place where presses become drags of a tool, movements of the table or a pinch. One pointer works the tool;
 * two fingers move and zoom and take back whatever the first of them had begun. `flush` hands the newest place to the
 * running drag, to be called once a frame. Every way a press can end leads to `up` or `cancel`; both may come twice.
 */
export function createGestures(host: GestureHost) {
  let state: State = { kind: 'idle' };
  const fingers = new Map<number, Contact>();
  let waiting = false;

  function placed(contact: Contact): PointerAt {
    const view = host.view();
    const { screen, kind, free } = contact;
    return { world: toWorld(view, screen), screen, kind, free, reach: REACH_PX[kind] / view.scale };
  }

  function down(contact: Contact): void {
    if (contact.kind === 'touch') {
      if ((state.kind === 'tool' || state.kind === 'pan') && state.from.kind !== 'touch') return; // a palm beside a pen
      fingers.set(contact.id, contact);
      if (fingers.size === 2) startPinch();
      if (fingers.size >= 2) return;
    } else if (state.kind !== 'idle') {
      if (contact.kind !== 'pen') return;
      abandon();
      fingers.clear();
    }
    const handles =
      host.handOnly() || contact.button === 'middle' || (contact.kind === 'touch' && host.fingersMoveOnly());
    const drag = handles ? undefined : host.tool().press(placed(contact));
    state = drag
      ? { kind: 'tool', id: contact.id, drag, from: contact, moved: false, last: contact }
      : { kind: 'pan', id: contact.id, from: contact, view: host.view(), declined: !handles, moved: false };
  }

  function move(contact: Contact): void {
    if (fingers.has(contact.id)) fingers.set(contact.id, contact);
    if (state.kind === 'pinch') {
      const [a, b] = [fingers.get(state.ids[0]), fingers.get(state.ids[1])];
      if (a && b) host.setView(pinchedView(state.pinch, a.screen, b.screen, host.limits()));
      return;
    }
    if (state.kind === 'idle' || state.id !== contact.id) return;
    if (state.kind === 'aim') {
      state.last = contact;
      waiting = true;
      return;
    }
    if (!state.moved) state.moved = apart(state.from, contact) > SLOP_PX[contact.kind];
    if (!state.moved) return;
    if (state.kind === 'pan') {
      const { from, view } = state;
      host.setView(panned(view, contact.screen.x - from.screen.x, contact.screen.y - from.screen.y));
      return;
    }
    state.last = contact;
    waiting = true;
  }

  /** Gives the running drag the newest place, if there is one it has not seen. */
  function flush(): void {
    if (!waiting) return;
    waiting = false;
    if (state.kind === 'tool') state.drag.move(placed(state.last));
    else if (state.kind === 'aim') host.tool().hover?.(finely(state.last));
  }

  /**
   * A finger has rested where it came down. Where it would only move the table, it aims from now on. Whether it does.
   */
  function rested(id: number): boolean {
    if (state.kind !== 'pan' || state.id !== id || state.moved || !state.declined || state.from.kind !== 'touch') {
      return false;
    }
    state = { kind: 'aim', id, from: state.from, last: state.from };
    host.tool().hover?.(finely(state.last));
    return true;
  }

  /** Under the magnifier a finger is as fine as a mouse. */
  function finely(contact: Contact): PointerAt {
    return placed({ ...contact, kind: 'mouse' });
  }

  function up(contact: Contact): void {
    fingers.delete(contact.id);
    if (state.kind === 'pinch') settlePinch();
    else settle(contact);
  }

  function settle(contact: Contact): void {
    if (state.kind === 'idle' || state.kind === 'pinch' || state.id !== contact.id) return;
    const ended = state;
    state = { kind: 'idle' };
    waiting = false;
    if (ended.kind === 'aim') {
      const at = finely(contact);
      host.tool().hover?.(undefined);
      const drag = host.tool().press(at);
      if (drag) drag.end(at);
      else host.tool().tap?.(at);
      return;
    }
    const moved = ended.moved || apart(ended.from, contact) > SLOP_PX[contact.kind];
    if (ended.kind === 'tool') ended.drag.end(placed(moved ? contact : ended.from));
    else if (ended.declined && !moved) host.tool().tap?.(placed(ended.from));
  }

  /** A pointer was taken away from us: a call came in, the capture was lost. */
  function cancel(id: number): void {
    fingers.delete(id);
    if (state.kind === 'pinch') settlePinch();
    else if (state.kind !== 'idle' && state.id === id) abandon();
  }

  /** Everything ends now and nothing of it counts: Escape, the window lost, the room left. Whether anything did. */
  function cancelAll(): boolean {
    fingers.clear();
    const busy = state.kind !== 'idle';
    abandon();
    return busy;
  }

  function abandon(): void {
    const ended = state;
    state = { kind: 'idle' };
    waiting = false;
    if (ended.kind === 'tool') ended.drag.cancel();
    else if (ended.kind === 'aim') host.tool().hover?.(undefined);
  }

  function startPinch(): void {
    abandon();
    const [a, b] = [...fingers.values()] as [Contact, Contact];
    state = { kind: 'pinch', ids: [a.id, b.id], pinch: beginPinch(host.view(), a.screen, b.screen) };
  }

  /** After a finger of a pinch has gone: the other goes on moving the table, and never reaches the tool. */
  function settlePinch(): void {
    if (fingers.size >= 2) {
      startPinch();
      return;
    }
    const [left] = fingers.values();
    state = left
      ? { kind: 'pan', id: left.id, from: left, view: host.view(), declined: false, moved: false }
      : { kind: 'idle' };
  }

  return {
    down,
    move,
    flush,
    up,
    cancel,
    cancelAll,
    rested,
    placed,
    /** The pointer that is working, if one is. */
    holder: (): Contact | undefined => (state.kind === 'tool' || state.kind === 'aim' ? state.last : undefined),
    doing: (): Doing =>
      state.kind === 'tool' || state.kind === 'aim' ? 'dragging' : state.kind === 'idle' ? 'nothing' : 'moving-table',
    /** Whether this pointer is part of what is going on. */
    holds: (id: number): boolean =>
      fingers.has(id) || (state.kind !== 'idle' && state.kind !== 'pinch' && state.id === id),
  };
}

function apart(a: Contact, b: Contact): number {
  return Math.hypot(b.screen.x - a.screen.x, b.screen.y - a.screen.y);
}
