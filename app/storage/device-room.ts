import { type DeviceRoom, useKept } from '../state/kept-store';

/** With less left than this a few more photos would fill the device. */
const SHORT_BYTES = 100 * 1024 * 1024;

/** Asking costs the browser a look at the disk, so it is not asked after every step. */
const ASK_AGAIN_MS = 20_000;

let lastAsked = Number.NEGATIVE_INFINITY;

/** Whether so little is left that she should make room before anything cannot be kept. */
export function isShort({ left }: DeviceRoom): boolean {
  return left < SHORT_BYTES;
}

/** Looks how much the browser still lets the page keep; `now` asks even if it was asked a moment ago. */
export async function lookAtRoom(when: 'now' | 'when-due' = 'when-due'): Promise<void> {
  const time = performance.now();
  if (when === 'when-due' && time - lastAsked < ASK_AGAIN_MS) return;
  lastAsked = time;
  try {
    const { usage, quota } = (await globalThis.navigator?.storage?.estimate?.()) ?? {};
    const room =
      usage === undefined || quota === undefined ? undefined : { used: usage, left: Math.max(0, quota - usage) };
    useKept.setState({ room });
  } catch {
    // A browser that does not say is taken to have room; a full one is noticed when it will not write.
  }
}

/** Whether the browser has said that it will not clear the store by itself. */
export async function isThereToStay(): Promise<boolean> {
  return (await globalThis.navigator?.storage?.persisted?.().catch(() => false)) ?? false;
}
