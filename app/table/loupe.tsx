import type { Stage as KonvaStage } from 'konva/lib/Stage';
import { type RefObject, useLayoutEffect, useRef } from 'react';
import type { Point } from '../../core/geometry/point';
import { canvasColours } from '../ui/canvas-colours';
import type { Size } from './view';
import styles from './viewport.module.css';

/** How many times larger than on the table. */
const MAGNIFIES = 4;
/** Across the glass, in CSS pixels. */
const GLASS_PX = 132;
/** How far its edge keeps from the finger. */
const CLEAR_PX = 44;

interface LoupeProps {
  readonly stage: RefObject<KonvaStage | null>;
  /** What the finger hides, in CSS pixels of the canvas. */
  readonly at: Point;
  readonly size: Size;
}

/** A magnifying glass over the finger, drawn afresh at its own size so that the picture shows all its detail. */
export function Loupe({ stage, at, size }: LoupeProps) {
  const glass = useRef<HTMLCanvasElement>(null);

  useLayoutEffect(() => {
    const canvas = glass.current;
    const table = stage.current;
    const context = canvas?.getContext('2d');
    if (!canvas || !table || !context) return;
    const ratio = canvas.width / GLASS_PX;
    const across = GLASS_PX / MAGNIFIES;
    const seen = table.toCanvas({
      x: at.x - across / 2,
      y: at.y - across / 2,
      width: across,
      height: across,
      pixelRatio: MAGNIFIES * ratio,
    });
    context.clearRect(0, 0, canvas.width, canvas.height);
    context.save();
    context.beginPath();
    context.arc(canvas.width / 2, canvas.height / 2, canvas.width / 2, 0, 2 * Math.PI);
    context.clip();
    context.fillStyle = canvasColours.paper;
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(seen, 0, 0, canvas.width, canvas.height);
    crossHair(context, canvas.width);
    context.restore();
    // Give the memory back at once: a phone has little of it for canvases.
    seen.width = 0;
    seen.height = 0;
  });

  const above = at.y - CLEAR_PX - GLASS_PX;
  const left = above >= 0 ? at.x - GLASS_PX / 2 : at.x > size.width / 2 ? at.x - CLEAR_PX - GLASS_PX : at.x + CLEAR_PX;
  const ratio = Math.min(2, window.devicePixelRatio || 1);
  return (
    // The canvas has no words of its own and takes no focus.
    <canvas
      ref={glass}
      className={styles.loupe}
      width={Math.round(GLASS_PX * ratio)}
      height={Math.round(GLASS_PX * ratio)}
      style={{
        width: GLASS_PX,
        height: GLASS_PX,
        transform: `translate(${Math.min(Math.max(4, left), size.width - GLASS_PX - 4)}px, ${Math.max(4, above)}px)`,
      }}
    />
  );
}

/** Two fine lines with the middle left open, so that what is aimed at stays in sight. */
function crossHair(context: CanvasRenderingContext2D, across: number): void {
  const middle = across / 2;
  const gap = across / 14;
  context.strokeStyle = canvasColours.chalk;
  context.lineWidth = across / 100;
  context.beginPath();
  for (const [x, y] of [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const) {
    context.moveTo(middle + x * gap, middle + y * gap);
    context.lineTo(middle + x * middle, middle + y * middle);
  }
  context.stroke();
}
