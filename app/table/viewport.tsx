import type { Stage as KonvaStage } from 'konva/lib/Stage';
import {
  type KeyboardEvent,
  memo,
  type ReactNode,
  type RefObject,
  useCallback,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { Stage } from 'react-konva/lib/ReactKonvaCore';
import type { Box } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import type { View } from '../state/table-store';
import { type Contact, createGestures } from './gestures';
import { type LiveView, useLiveView, useMovingView, useSizeOf } from './live-view';
import { Loupe } from './loupe';
import { setPixelRatio, usePixelRatio } from './pixel-ratio';
import type { Tool } from './tool';
import { usePointer } from './use-pointer';
import { fittedView, panned, type Size, steppedScale, zoomedTo } from './view';
import styles from './viewport.module.css';
import { ZoomButtons } from './zoom-buttons';

interface ViewportProps {
  /** The view the room remembers, or none yet. */
  readonly view: View | undefined;
  /** Told once the table has come to rest. */
  readonly onView: (view: View) => void;
  /** What is shown at first and by "show everything", in world units. Keep the object while it stays the same. */
  readonly fit: Box;
  /** Another number than before shows everything again. */
  readonly fitAgain?: number;
  readonly tool: Tool;
  /** What the canvas is, for those who hear the page. */
  readonly label: string;
  /** CSS pixels a world unit takes at most and at least. */
  readonly maxScale: number;
  readonly minScale: number;
  /** Konva layers in world units: the stage carries the view. */
  readonly children: (view: View) => ReactNode;
  /** DOM over the canvas, in CSS pixels of the canvas. */
  readonly overlay?: (view: View) => ReactNode;
  /** Whether the magnifier comes with every drag or only under a finger. */
  readonly loupe?: 'touch' | 'always';
}

/** A canvas to work on with mouse, pen, fingers and keys. It owns moving and zooming; the tool owns the rest. */
export function Viewport(props: ViewportProps) {
  const {
    view,
    onView,
    fit,
    tool,
    label,
    maxScale,
    minScale,
    children,
    overlay,
    loupe = 'touch',
    fitAgain = 0,
  } = props;
  const surface = useRef<HTMLDivElement>(null);
  const stage = useRef<KonvaStage>(null);
  const size = useSizeOf(surface);
  const [limits, setLimits] = useState({ min: minScale, max: maxScale });
  if (limits.min !== minScale || limits.max !== maxScale) setLimits({ min: minScale, max: maxScale });
  const live = useLiveView({ view, onView, fit, size, limits, fitAgain });
  const [handOnly, setHandOnly] = useState(false);
  const [fingersDraw, setFingersDraw] = useState<boolean>();
  const [hidden, setHidden] = useState<Point>();

  const latest = useRef({ tool, limits, handOnly, fingersDraw });
  useLayoutEffect(() => {
    latest.current = { tool, limits, handOnly, fingersDraw };
  });
  const [gestures] = useState(() =>
    createGestures({
      view: () => live.get() ?? { scale: 1, x: 0, y: 0 },
      setView: (next) => live.move(next),
      limits: () => latest.current.limits,
      tool: () => latest.current.tool,
      handOnly: () => latest.current.handOnly,
      fingersMoveOnly: () => latest.current.fingersDraw === false,
    }),
  );

  const showCursor = useCallback(() => {
    const doing = gestures.doing();
    const idle = latest.current.handOnly ? 'grab' : latest.current.tool.cursor;
    if (surface.current) surface.current.style.cursor = doing === 'moving-table' ? 'grabbing' : idle;
  }, [gestures]);
  const changed = useCallback(() => {
    showCursor();
    const holder = gestures.holder();
    setHidden(holder && (loupe === 'always' || holder.kind === 'touch') ? holder.screen : undefined);
  }, [gestures, showCursor, loupe]);
  const hover = useCallback(
    (contact: Contact | undefined) => latest.current.tool.hover?.(contact && gestures.placed(contact)),
    [gestures],
  );
  const penSeen = useCallback(() => setFingersDraw((draw) => draw ?? false), []);
  const zoomBy = useCallback(
    (steps: number, anchor: Point) => {
      const now = live.get();
      if (now) live.move(zoomedTo(now, steppedScale(now.scale, steps), anchor, latest.current.limits));
    },
    [live],
  );
  const wheeled = useRef(0);
  const wheel = useCallback(
    (deltaPx: number, screen: Point) => {
      wheeled.current -= deltaPx / WHEEL_PX_A_STEP;
      const steps = Math.trunc(wheeled.current);
      wheeled.current -= steps;
      if (steps !== 0) zoomBy(steps, screen);
    },
    [zoomBy],
  );
  usePointer({ surface, gestures, hover, changed, penSeen, wheel });
  useLayoutEffect(showCursor);

  const middle = size ? { x: size.width / 2, y: size.height / 2 } : { x: 0, y: 0 };
  const showAll = () => size && live.move(fittedView(fit, size, limits));

  function press(event: KeyboardEvent) {
    if (event.target !== surface.current || event.ctrlKey || event.metaKey || event.altKey) return;
    if (!(tool.key?.({ key: event.key, shift: event.shiftKey }) || moveByKey(event.key))) return;
    event.preventDefault();
    event.stopPropagation();
  }

  function moveByKey(key: string): boolean {
    const step = panKeys[key];
    const now = live.get();
    if (step && now) live.move(panned(now, step[0] * KEY_PAN_PX, step[1] * KEY_PAN_PX));
    else if (key === '+' || key === '=') zoomBy(KEY_STEPS, middle);
    else if (key === '-') zoomBy(-KEY_STEPS, middle);
    else if (key === '0') showAll();
    else return false;
    return true;
  }

  return (
    <div className={styles.viewport}>
      <div
        ref={surface}
        className={styles.surface}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a canvas worked by keys needs the focus
        tabIndex={0}
        role="application"
        aria-label={label}
        onPointerDown={live.claim}
        onKeyDown={press}
      >
        {size && (
          <Drawn live={live} size={size} stage={stage} overlay={overlay}>
            {children}
          </Drawn>
        )}
        {size && hidden && <Loupe stage={stage} at={hidden} size={size} />}
      </div>
      <ZoomButtons
        onStep={(steps) => zoomBy(steps, middle)}
        onFit={showAll}
        handOnly={handOnly}
        onHandOnly={setHandOnly}
        fingersDraw={fingersDraw}
        onFingersDraw={setFingersDraw}
      />
    </div>
  );
}

interface DrawnProps {
  readonly live: LiveView;
  readonly size: Size;
  readonly stage: RefObject<KonvaStage | null>;
  readonly children: (view: View) => ReactNode;
  readonly overlay: ((view: View) => ReactNode) | undefined;
}

/** The part that follows every movement of the table, and nothing else. */
const Drawn = memo(function Drawn({ live, size, stage, children, overlay }: DrawnProps) {
  const view = useMovingView(live);
  const ratio = usePixelRatio(size);
  useLayoutEffect(() => {
    if (stage.current) setPixelRatio(stage.current, ratio);
  });
  if (!view) return null;
  return (
    <>
      <div className={styles.stage}>
        <Stage
          ref={stage}
          width={size.width}
          height={size.height}
          x={view.x}
          y={view.y}
          scaleX={view.scale}
          scaleY={view.scale}
          listening={false}
        >
          {children(view)}
        </Stage>
      </div>
      {overlay && <div className={styles.overlay}>{overlay(view)}</div>}
    </>
  );
});

/** Pixels of wheel in one step; a notch of a mouse is about 100 pixels and so near a quarter of a doubling. */
const WHEEL_PX_A_STEP = 6.25;
/** A key zooms by half a doubling and moves the table by this much. */
const KEY_STEPS = 32;
const KEY_PAN_PX = 60;

const panKeys: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
