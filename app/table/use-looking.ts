import { useCallback, useRef } from 'react';
import type { Box } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import type { LiveView } from './live-view';
import { fittedView, panned, type ScaleLimits, type Size, steppedScale, toWorld, widthView, zoomedTo } from './view';

/** Ways to look at the table: what the wheel, the buttons and the keys do. */
export interface Looking {
  zoomBy(steps: number, anchor?: Point): void;
  wheel(deltaPx: number, screen: Point): void;
  slide(dx: number, dy: number): void;
  showAll(): void;
  /** The piece in hand, or the one nearest to the middle. */
  showPiece(): void;
  fillWidth(): void;
  back(): void;
  /** Whether the key meant a way to look. */
  key(key: string): boolean;
}

interface LookingOptions {
  readonly live: LiveView;
  readonly fit: Box;
  readonly size: Size | undefined;
  readonly limits: ScaleLimits;
  /** The box to look at near a place of the world, if there is one. */
  readonly near: ((place: Point) => Box | undefined) | undefined;
}

export function useLooking(options: LookingOptions): Looking {
  const latest = useRef(options);
  latest.current = options;
  const wheeled = useRef(0);

  const zoomBy = useCallback((steps: number, anchor?: Point) => {
    const { live, limits, size } = latest.current;
    const now = live.get();
    if (!now || !size) return;
    live.move(zoomedTo(now, steppedScale(now.scale, steps), anchor ?? middleOf(size), limits));
  }, []);

  const wheel = useCallback(
    (deltaPx: number, screen: Point) => {
      wheeled.current -= deltaPx / WHEEL_PX_A_STEP;
      const steps = Math.trunc(wheeled.current);
      wheeled.current -= steps;
      if (steps !== 0) zoomBy(steps, screen);
    },
    [zoomBy],
  );

  const slide = useCallback((dx: number, dy: number) => {
    const { live } = latest.current;
    const now = live.get();
    if (now) live.move(panned(now, dx, dy));
  }, []);

  const { live, fit, size, limits, near } = options;
  const nearest = () => {
    const now = live.get();
    return (now && size && near?.(toWorld(now, middleOf(size)))) ?? fit;
  };
  const showAll = () => size && live.jump(fittedView(fit, size, limits));
  const showPiece = () => size && live.jump(fittedView(nearest(), size, limits));
  const fillWidth = () => size && live.jump(widthView(nearest(), size, limits));
  const back = () => void live.back();

  function key(pressed: string): boolean {
    const way = PAN_KEYS[pressed];
    if (way) slide(way[0] * KEY_PAN_PX, way[1] * KEY_PAN_PX);
    else if (pressed === '+' || pressed === '=') zoomBy(KEY_STEPS);
    else if (pressed === '-') zoomBy(-KEY_STEPS);
    else if (pressed === '0') showAll();
    else if (pressed === '9') showPiece();
    else if (pressed === '8') fillWidth();
    else if (pressed === '7') back();
    else return false;
    return true;
  }

  return { zoomBy, wheel, slide, showAll, showPiece, fillWidth, back, key };
}

function middleOf({ width, height }: Size): Point {
  return { x: width / 2, y: height / 2 };
}

/** Pixels of wheel in one step; a notch of a mouse is about 100 pixels and so near a quarter of a doubling. */
const WHEEL_PX_A_STEP = 6.25;
/** A key zooms by half a doubling and moves the table by this much. */
const KEY_STEPS = 32;
const KEY_PAN_PX = 60;

const PAN_KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
