import type { CDPSession, Page } from '@playwright/test';
import type { Point } from '../core/geometry/point';

export interface Fingers {
  /** Fingers newly down or still down, each at its place. */
  down(places: readonly Point[]): Promise<void>;
  glide(from: readonly Point[], to: readonly Point[]): Promise<void>;
  up(): Promise<void>;
}

/** Real touches, as the screen would report them; Playwright's own only tap. */
export async function fingersOn(page: Page): Promise<Fingers> {
  const session: CDPSession = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', places: readonly Point[]) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: places.map(({ x, y }, id) => ({ x, y, id })),
    });
  return {
    down: async (places) => {
      await send('touchStart', places);
    },
    async glide(from, to) {
      const steps = 6;
      for (let step = 1; step <= steps; step++) {
        const share = step / steps;
        await send(
          'touchMove',
          from.map(({ x, y }, finger) => {
            const end = to[finger] ?? { x, y };
            return { x: x + (end.x - x) * share, y: y + (end.y - y) * share };
          }),
        );
      }
    },
    up: async () => {
      await send('touchEnd', []);
    },
  };
}
