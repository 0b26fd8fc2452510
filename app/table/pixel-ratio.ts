import Konva from 'konva/lib/Core';
import { useEffect, useState } from 'react';
import type { Size } from './view';

/** The most device pixels one canvas may hold: what iOS still paints (16.7 million), for several layers at a time. */
const MOST_PIXELS = 8e6;

/**
 * Device pixels in a CSS pixel for the layers of a canvas, followed as the window moves to another screen or the page
 * is zoomed. At most 2, less on very large canvases.
 */
export function usePixelRatio(size: Size | undefined): number {
  const [device, setDevice] = useState(() => window.devicePixelRatio || 1);
  useEffect(() => {
    const query = window.matchMedia(`(resolution: ${device}dppx)`);
    const changed = () => setDevice(window.devicePixelRatio || 1);
    query.addEventListener('change', changed);
    // Some browsers tell of a zoom only by the size of the window.
    window.addEventListener('resize', changed);
    return () => {
      query.removeEventListener('change', changed);
      window.removeEventListener('resize', changed);
    };
  }, [device]);
  const cap = size ? Math.sqrt(MOST_PIXELS / (size.width * size.height)) : 2;
  return Math.min(device, 2, cap);
}

/** Brings the layers of a stage to a pixel ratio, and those that are still to come. */
export function setPixelRatio(stage: Konva.Stage, ratio: number): void {
  Konva.pixelRatio = ratio;
  for (const layer of stage.getLayers()) {
    const canvas = layer.getCanvas();
    if (canvas.getPixelRatio() === ratio) continue;
    canvas.setPixelRatio(ratio);
    layer.batchDraw();
  }
}
