import { type RefObject, useEffect } from 'react';
import type { Contact, Gestures } from './gestures';
import { isPalm } from './palm';
import type { PointerKind } from './tool';

interface PointerOptions {
  readonly surface: RefObject<HTMLElement | null>;
  readonly gestures: Gestures;
  /** Tells the tool where the pointer hovers, `undefined` when it has left. */
  readonly hover: (contact: Contact | undefined) => void;
  /** Something changed in what the pointer does: cursor and magnifier follow. */
  readonly changed: () => void;
  readonly penSeen: () => void;
  /** Wheel turned: pixels down the page, at a place of the canvas. */
  readonly wheel: (deltaPx: number, screen: { readonly x: number; readonly y: number }) => void;
  /** Wheel turned sideways, or with Shift: the table slides by so many pixels. */
  readonly slide: (dx: number, dy: number) => void;
}

/**
 * Listens to the pointers over a canvas and hears every way a press can end: released here or outside the window,
 * cancelled, capture lost or never gained, Escape, the window left, the page hidden, the room closed.
 */
export function usePointer({ surface, gestures, hover, changed, penSeen, wheel, slide }: PointerOptions): void {
  useEffect(() => {
    const box = surface.current;
    if (!box) return;
    let frame = 0;
    let hovering: Contact | undefined;
    let corner: { readonly left: number; readonly top: number } | undefined;
    let penSeenAt: number | undefined;
    let resting: ReturnType<typeof setTimeout> | undefined;

    const eachFrame = () => {
      frame = 0;
      gestures.flush();
      if (hovering) hover(hovering);
      hovering = undefined;
      changed();
    };
    const soon = () => {
      if (frame === 0) frame = requestAnimationFrame(eachFrame);
    };

    const contactOf = (event: PointerEvent): Contact => {
      // The canvas stays where it is while something is moved on it; to ask again would lay the page out at every move.
      if (gestures.doing() === 'nothing' || !corner) corner = box.getBoundingClientRect();
      const { left, top } = corner;
      return {
        id: event.pointerId,
        kind: kindOf(event),
        screen: { x: event.clientX - left, y: event.clientY - top },
        free: event.altKey || event.shiftKey,
        button: event.button === 1 ? 'middle' : 'main',
      };
    };

    const down = (event: PointerEvent) => {
      if (event.button > 1) return;
      if (event.pointerType === 'pen') penSeen();
      if (event.pointerType === 'touch' && isPalm(event, penSeenAt)) return;
      if (event.button === 1) event.preventDefault();
      // A field that is left takes what was written in it now, before the press chooses something else.
      if (document.activeElement instanceof HTMLElement && document.activeElement !== box)
        document.activeElement.blur();
      try {
        box.setPointerCapture(event.pointerId);
      } catch {
        // The pointer is gone already, or was never real; the listeners on the window serve without capture.
      }
      hovering = undefined;
      gestures.down(contactOf(event));
      changed();
      clearTimeout(resting);
      if (event.pointerType === 'touch')
        resting = setTimeout(() => gestures.rested(event.pointerId) && changed(), REST_MS);
    };
    const move = (event: PointerEvent) => {
      if (event.pointerType === 'pen') penSeenAt = event.timeStamp;
      if (gestures.holds(event.pointerId)) {
        // A mouse that moves without a button was released where nobody heard it.
        if (event.pointerType === 'mouse' && event.buttons === 0) return up(event);
        gestures.move(contactOf(event));
      } else if (event.pointerType !== 'touch' && event.target instanceof Node && box.contains(event.target)) {
        hovering = contactOf(event);
      } else return;
      soon();
    };
    const up = (event: PointerEvent) => {
      if (!gestures.holds(event.pointerId)) return;
      if (event.pointerType === 'pen') penSeenAt = event.timeStamp;
      gestures.up(contactOf(event));
      changed();
    };
    const gone = (event: PointerEvent) => {
      gestures.cancel(event.pointerId);
      changed();
    };
    const leave = () => {
      hovering = undefined;
      hover(undefined);
    };
    const allGone = () => {
      gestures.cancelAll();
      changed();
    };
    const hidden = () => document.hidden && allGone();
    const escapeKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || !gestures.cancelAll()) return;
      event.stopPropagation();
      event.preventDefault();
      changed();
    };
    const turned = (event: WheelEvent) => {
      event.preventDefault();
      if (gestures.doing() !== 'nothing') return;
      const { left, top } = box.getBoundingClientRect();
      // A pinch on a trackpad comes as a wheel with the control key and small numbers.
      const unit = event.deltaMode === 1 ? 16 : event.deltaMode === 2 ? box.clientHeight : 1;
      const across = event.shiftKey && event.deltaX === 0 ? event.deltaY : event.deltaX;
      if (event.shiftKey || Math.abs(across) > Math.abs(event.deltaY)) {
        slide(-across * unit, 0);
        return;
      }
      const delta = event.deltaY * unit * (event.ctrlKey && Math.abs(event.deltaY) < 50 ? 4 : 1);
      wheel(delta, { x: event.clientX - left, y: event.clientY - top });
    };
    const none = (event: Event) => event.preventDefault();

    box.addEventListener('pointerdown', down);
    box.addEventListener('lostpointercapture', gone);
    box.addEventListener('pointerleave', leave);
    box.addEventListener('wheel', turned, { passive: false });
    box.addEventListener('contextmenu', none);
    window.addEventListener('pointermove', move);
    window.addEventListener('pointerup', up);
    window.addEventListener('pointercancel', gone);
    window.addEventListener('keydown', escapeKey, true);
    window.addEventListener('blur', allGone);
    document.addEventListener('visibilitychange', hidden);
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(resting);
      gestures.cancelAll();
      box.removeEventListener('pointerdown', down);
      box.removeEventListener('lostpointercapture', gone);
      box.removeEventListener('pointerleave', leave);
      box.removeEventListener('wheel', turned);
      box.removeEventListener('contextmenu', none);
      window.removeEventListener('pointermove', move);
      window.removeEventListener('pointerup', up);
      window.removeEventListener('pointercancel', gone);
      window.removeEventListener('keydown', escapeKey, true);
      window.removeEventListener('blur', allGone);
      document.removeEventListener('visibilitychange', hidden);
    };
  }, [surface, gestures, hover, changed, penSeen, wheel, slide]);
}

/** A finger that rests this long aims instead of moving the table. */
const REST_MS = 450;

function kindOf(event: PointerEvent): PointerKind {
  return event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse';
}
