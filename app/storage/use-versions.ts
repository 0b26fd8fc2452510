import { useEffect } from 'react';
import type { StoredVersion } from '../../core/garment/version';
import { useVersions } from '../state/versions-store';
import { versionsOf } from './versions';

const NONE: readonly StoredVersion[] = [];

/** Reads the versions of a garment anew; a room that shows them calls it when one was kept. */
export async function readVersionsAgain(garmentId: string): Promise<void> {
  try {
    useVersions.setState({ garmentId, versions: await versionsOf(garmentId), reading: 'read' });
  } catch {
    useVersions.setState({ garmentId, versions: [], reading: 'failed' });
  }
}

/** The versions of a garment, the oldest first, read whenever a room is entered that shows them. */
export function useVersionsOf(garmentId: string): {
  readonly versions: readonly StoredVersion[];
  readonly reading: 'waiting' | 'read' | 'failed';
} {
  const { garmentId: whose, versions, reading } = useVersions();
  useEffect(() => void readVersionsAgain(garmentId), [garmentId]);
  return whose === garmentId ? { versions, reading } : { versions: NONE, reading: 'waiting' };
}
