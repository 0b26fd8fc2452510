/** Where thin printed lines, one about level and one about upright, cross in a picture that is roughly squared up. */
import type { Point } from '../geometry/point';
import type { Grey } from './grey';

/** A likely crossing: its pixel, and how dark both its lines are against the paper beside them. */
export interface LikelyCrossing extends Point {
  readonly strength: number;
}

/** Paper is looked for so many pixels to each side of a line. */
const BESIDE = 3;

/** Lines are followed from the crossing over these distances, in pixels. */
const ARM = [3, 4, 5, 6, 7] as const;

/** A crossing weaker than this share of the strong ones is lettering or noise. */
const WEAKEST = 0.3;

/** Likely crossings, each the strongest within 4 pixels. */
export function likelyCrossings(grey: Grey): LikelyCrossing[] {
  const { width, height } = grey;
  const level = darkness(grey, width);
  const upright = darkness(grey, 1);
  const strength = new Float32Array(width * height);
  const reach = ARM[ARM.length - 1] as number;
  for (let y = reach + 1; y < height - reach - 1; y++) {
    for (let x = reach + 1; x < width - reach - 1; x++) {
      const at = y * width + x;
      const across = arms(level, at, 1, width);
      if (across < 0.015) continue;
      strength[at] = Math.min(across, arms(upright, at, width, 1));
    }
  }
  const strong = Float32Array.from(strength).sort();
  const least = Math.max(0.015, WEAKEST * (strong[Math.floor(strong.length * 0.9985)] as number));
  return peaks(strength, width, height, least);
}

/** How much darker a pixel is than the lighter-lying paper to both sides, `step` pixels apart in the row of data. */
function darkness({ width, height, data }: Grey, step: number): Float32Array {
  const dark = new Float32Array(data.length);
  const away = BESIDE * step;
  for (let y = BESIDE; y < height - BESIDE; y++) {
    for (let x = BESIDE; x < width - BESIDE; x++) {
      const at = y * width + x;
      const paper = Math.min(data[at - away] as number, data[at + away] as number);
      dark[at] = Math.max(paper - (data[at] as number), 0);
    }
  }
  return dark;
}

/** The mean of both arms of a line along `step`, half of it from the weaker one; lines may lean by a pixel (`lean`). */
function arms(dark: Float32Array, at: number, step: number, lean: number): number {
  let [before, after] = [0, 0];
  for (const k of ARM) {
    const [b, a] = [at - k * step, at + k * step];
    before += Math.max(dark[b - lean] as number, dark[b] as number, dark[b + lean] as number);
    after += Math.max(dark[a - lean] as number, dark[a] as number, dark[a + lean] as number);
  }
  return (before + after) / (2 * ARM.length);
}

function peaks(strength: Float32Array, width: number, height: number, least: number): LikelyCrossing[] {
  const found: LikelyCrossing[] = [];
  const near = 4;
  for (let y = near; y < height - near; y++) {
    for (let x = near; x < width - near; x++) {
      const own = strength[y * width + x] as number;
      if (own < least) continue;
      let isTop = true;
      for (let dy = -near; dy <= near && isTop; dy++) {
        for (let dx = -near; dx <= near; dx++) {
          const other = strength[(y + dy) * width + x + dx] as number;
          if (other > own || (other === own && (dy < 0 || (dy === 0 && dx < 0)))) {
            isTop = false;
            break;
          }
        }
      }
      if (isTop) found.push({ x: x + 0.5, y: y + 0.5, strength: own });
    }
  }
  return found;
}
