import { create } from 'zustand';

/** What the browser lets this page keep, in bytes. */
export interface DeviceRoom {
  readonly used: number;
  readonly left: number;
}

interface KeptState {
  /** What this device kept was cleared away while the page was open; the garment on the table was kept anew. */
  readonly cleared: boolean;
  /** The garment on the table was laid beside the one it came of, which another window had changed meanwhile. */
  readonly laidBeside: { readonly garmentId: string } | undefined;
  /** An older program in another window holds the store; it opens when that window is closed. */
  readonly blocked: boolean;
  /** A newer program made the store; it is read, and never written into. */
  readonly storeIsNewer: boolean;
  /** Room held back for the day the device is full: there, given up, or not looked for yet. */
  readonly reserve: 'laid' | 'spent' | 'not-known';
  /** The file of a garment that a newer program made, as it came; only looked at here, and not kept. */
  readonly asItCame: { readonly garmentId: string; readonly name: string; readonly bytes: Uint8Array } | undefined;
  /** The garment that was on the table last and could not be taken up again when the page opened. */
  readonly unopened: { readonly name: string; readonly why: 'missing' | 'newer' | 'not-a-garment' } | undefined;
  /** Counts the copies noted, so that what shows their age looks again. */
  readonly copies: number;
  /** As last looked at; missing where the browser does not say. */
  readonly room: DeviceRoom | undefined;
}

/** What became of the browser's store under the page. */
export const useKept = create<KeptState>(() => ({
  cleared: false,
  laidBeside: undefined,
  blocked: false,
  storeIsNewer: false,
  reserve: 'not-known',
  asItCame: undefined,
  unopened: undefined,
  copies: 0,
  room: undefined,
}));
