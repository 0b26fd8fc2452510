/** Directions along which gaps are looked for: every 180/16 degrees, so that a line is never more than 6° off one. */
const DIRECTIONS = 16;

/** A gap longer than this, in pixels, is two lines. */
const LONGEST_GAP = 22;

/** Ink on both sides of a gap runs on for at least so long, in pixels: less is a speck. A dot of a dotted line does. */
const LEAST_DASH = 3;

/** How much longer than the shorter of the dashes beside it a gap may be: from one line across to the next is more. */
const GAP_TO_DASH = 2;

interface Gaps {
  readonly width: number;
  readonly height: number;
  /** Costs up to this are ink. */
  readonly ink: number;
  /** What it costs to go over a gap between two dashes. */
  readonly over: number;
}

/**
 * Makes it cheap to go straight on from the end of one dash to the next, so that a way keeps to a dashed or broken line
 * and does not go round by a solid one beside it. The costs are left as they are;
 * those with the gaps bridged are returned.
 */
export function gapsBridged(cost: Uint8Array, { width, height, ink, over }: Gaps): Uint8Array {
  const bridged = cost.slice();
  const isInk = Uint8Array.from(cost, (here) => (here <= ink ? 1 : 0));
  for (let direction = 0; direction < DIRECTIONS; direction++) {
    const angle = (Math.PI * direction) / DIRECTIONS;
    const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
    const level = Math.abs(dx) >= Math.abs(dy);
    // Lines go one pixel on along the longer side at each step, and aside by the slope.
    const slope = level ? dy / dx : dx / dy;
    const [steps, lanes] = level ? [width, height] : [height, width];
    const [onward, aside] = level ? [1, width] : [width, 1];
    const shift = Int32Array.from({ length: steps }, (_, i) => Math.round(slope * i));
    const stretch = Math.hypot(1, slope);
    const lean = shift[steps - 1] as number;
    for (let lane = Math.min(0, -lean); lane < lanes + Math.max(0, -lean); lane++) {
      bridgeLane(lane);
    }

    function bridgeLane(lane: number): void {
      const place = (i: number) => i * onward + (lane + (shift[i] as number)) * aside;
      let [before, gap, dash] = [0, 0, 0];
      for (let i = 0; i < steps; i++) {
        const side = lane + (shift[i] as number);
        if (side < 0 || side >= lanes) continue;
        if (isInk[i * onward + side * aside]) {
          dash += 1;
          if (gap > 0 && dash * stretch >= LEAST_DASH && gap <= GAP_TO_DASH * Math.min(before, dash)) {
            for (let k = i - dash; k > i - dash - gap; k--) {
              const at = place(k);
              if ((bridged[at] as number) > over) bridged[at] = over;
            }
            gap = 0;
          }
        } else {
          if (dash > 0) {
            before = dash * stretch >= LEAST_DASH ? dash : 0;
            gap = 0;
            dash = 0;
          }
          if (before === 0) continue;
          gap += 1;
          if (gap * stretch > LONGEST_GAP) before = gap = 0;
        }
      }
    }
  }
  return bridged;
}
