import { create } from 'zustand';
import type { StoredVersion } from '../../core/garment/version';

interface VersionsState {
  /** Whose versions these are. */
  readonly garmentId: string | undefined;
  /** The oldest first. */
  readonly versions: readonly StoredVersion[];
  readonly reading: 'waiting' | 'read' | 'failed';
}

/** The versions of the garment on the table, as they were last read. */
export const useVersions = create<VersionsState>(() => ({ garmentId: undefined, versions: [], reading: 'waiting' }));
