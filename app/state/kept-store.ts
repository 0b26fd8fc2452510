import { create } from 'zustand';

interface KeptState {
  /** What this device kept was cleared away while the page was open; the garment on the table was kept anew. */
  readonly cleared: boolean;
}

/** What became of the browser's store under the page. */
export const useKept = create<KeptState>(() => ({ cleared: false }));
