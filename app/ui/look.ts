import { create } from 'zustand';
import { forgetColours } from './canvas-colours';

/** Daylight or evening, or whichever the device asks for. */
export const LOOKS = ['device', 'light', 'dark'] as const;
export type Look = (typeof LOOKS)[number];

const KEY = 'look';

interface LookState {
  readonly choice: Look;
  readonly shown: 'light' | 'dark';
  /** Another number than before: what is painted in the old colours must be painted anew. */
  readonly painted: number;
}

export const useLook = create<LookState>(() => ({ choice: 'device', shown: 'light', painted: 0 }));

/** Takes the look that was last chosen here, and follows the device from then on. Once, before anything is shown. */
export function startLook(): void {
  for (const question of ['(prefers-color-scheme: dark)', '(forced-colors: active)']) {
    matchMedia(question).addEventListener('change', () => show(useLook.getState().choice));
  }
  show(kept());
}

/** Chooses a look and remembers it on this device. */
export function chooseLook(choice: Look): void {
  try {
    if (choice === 'device') localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, choice);
  } catch {
    // Storage is shut: it lasts as long as the page does.
  }
  show(choice);
}

function show(choice: Look): void {
  const dark = choice === 'dark' || (choice === 'device' && matchMedia('(prefers-color-scheme: dark)').matches);
  const shown = dark ? 'dark' : 'light';
  const root = document.documentElement;
  root.dataset.look = shown;
  forgetColours();
  const paper = getComputedStyle(root).getPropertyValue('--paper').trim();
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', paper);
  useLook.setState(({ painted }) => ({ choice, shown, painted: painted + 1 }));
}

function kept(): Look {
  try {
    return LOOKS.find((look) => look === localStorage.getItem(KEY)) ?? 'device';
  } catch {
    return 'device';
  }
}
