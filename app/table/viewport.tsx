import type { Stage as KonvaStage } from 'konva/lib/Stage';
import {
  type KeyboardEvent,
  memo,
  type ReactNode,
  type RefObject,
  useCallback,
  useId,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { Stage } from 'react-konva/lib/ReactKonvaCore';
import type { Box } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import { useTable, type View } from '../state/table-store';
import { tableWords as words } from '../words/table';
import { type Contact, createGestures } from './gestures';
import { type LiveView, useLiveView, useMovingView, useSizeOf } from './live-view';
import { Loupe } from './loupe';
import { boxNear } from './piece-boxes';
import { setPixelRatio, usePixelRatio } from './pixel-ratio';
import type { Tool } from './tool';
import { useLooking } from './use-looking';
import { usePointer } from './use-pointer';
import { type Lying, useReading } from './use-reading';
import { type Size, toScreen } from './view';
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
  /** The pieces that lie there, to be gone over by keys; in a room whose own keys do that, only to be shown. */
  readonly lying?: Lying;
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
    lying,
  } = props;
  const keysId = useId();
  const surface = useRef<HTMLDivElement>(null);
  const stage = useRef<KonvaStage>(null);
  const size = useSizeOf(surface);
  const [limits, setLimits] = useState({ min: minScale, max: maxScale });
  if (limits.min !== minScale || limits.max !== maxScale) setLimits({ min: minScale, max: maxScale });
  const live = useLiveView({ view, onView, fit, size, limits, fitAgain });
  const looking = useLooking({
    live,
    fit,
    size,
    limits,
    near: lying && ((place) => boxNear(lying.pieces(), pieceIdInHand(), place)),
  });
  const { wheel, slide } = looking;
  const reading = useReading(lying);
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
  usePointer({ surface, gestures, hover, changed, penSeen, wheel, slide });
  useLayoutEffect(showCursor);

  function press(event: KeyboardEvent) {
    if (event.target !== surface.current || event.ctrlKey || event.metaKey || event.altKey) return;
    const pressed = { key: event.key, shift: event.shiftKey };
    if (!(tool.key?.(pressed) || reading.key(pressed) || pressHere(event.key) || looking.key(event.key))) return;
    event.preventDefault();
    event.stopPropagation();
  }

  /** Enter presses where the keys have led, as a mouse would. */
  function pressHere(key: string): boolean {
    const now = live.get();
    if (key !== 'Enter' || !reading.here || !now || !tool.tap) return false;
    const screen = toScreen(now, reading.here);
    tool.tap(gestures.placed({ id: 0, kind: 'mouse', screen, free: true, button: 'main' }));
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
        aria-describedby={lying && keysId}
        onPointerDown={live.claim}
        onKeyDown={press}
      >
        {size && (
          <Drawn live={live} size={size} stage={stage} overlay={overlay} here={reading.here}>
            {children}
          </Drawn>
        )}
        {size && hidden && <Loupe stage={stage} at={hidden} size={size} />}
      </div>
      {lying && (
        <p id={keysId} className="only-heard">
          {words.keys} {tool.tap && words.enterPresses}
        </p>
      )}
      <ZoomButtons
        looking={looking}
        withPieces={lying !== undefined}
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
  /** Where the keys have led, in world units. */
  readonly here: Point | undefined;
}

/** The part that follows every movement of the table, and nothing else. */
const Drawn = memo(function Drawn({ live, size, stage, children, overlay, here }: DrawnProps) {
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
      {here && <Ring at={toScreen(view, here)} />}
    </>
  );
});

/** Round the place where the keys have led. */
function Ring({ at: { x, y } }: { readonly at: Point }) {
  return <div className={styles.here} style={{ transform: `translate(${x}px, ${y}px)` }} />;
}

function pieceIdInHand(): string | undefined {
  const { chosen } = useTable.getState();
  return 'pieceId' in chosen ? chosen.pieceId : undefined;
}
