import { useEffect, useMemo, useState } from 'react';
import { create } from 'zustand';
import type { CleanUp } from '../../core/picture/cleaned';
import { useTable } from '../state/table-store';
import { cleanWork } from '../workers/clean-calls';
import type { LaidPicture } from './picture-shape';

/** The share done of cleaning up, while a picture of a diagram is being cleaned; and the last that could not be. */
export const useCleaning = create<{
  readonly share: Readonly<Record<string, number | undefined>>;
  readonly failed: string | undefined;
}>(() => ({ share: {}, failed: undefined }));

/** How long a picture must stay the same before it is cleaned up. */
const REST_MS = 150;

interface Cleaned {
  readonly source: ImageBitmap;
  readonly how: CleanUp;
  readonly levels: readonly ImageBitmap[];
}

/** A picture as she wants to see it: cleaned up as chosen for its diagram, and until that is made as it is. */
export function useCleaned(diagramId: string, laid: LaidPicture | undefined): LaidPicture | undefined {
  const how = useTable((table) => table.cleanUp[diagramId]);
  const [cleaned, setCleaned] = useState<Cleaned>();
  const source = laid?.levels[0];

  useEffect(() => {
    if (!how || !source) return;
    const leaving = new AbortController();
    const { signal } = leaving;
    const timer = setTimeout(async () => {
      const made = await clean(diagramId, source, how, signal);
      if (made && !signal.aborted) setCleaned({ source, how, levels: made });
      else for (const level of made ?? []) level.close();
    }, REST_MS);
    return () => {
      clearTimeout(timer);
      leaving.abort();
      tell(diagramId, undefined);
      setCleaned(undefined);
    };
  }, [diagramId, how, source]);

  useEffect(() => () => closeAll(cleaned), [cleaned]);

  return useMemo(
    () =>
      laid && cleaned && cleaned.source === source && cleaned.how === how ? { ...laid, levels: cleaned.levels } : laid,
    [laid, cleaned, source, how],
  );
}

async function clean(diagramId: string, source: ImageBitmap, how: CleanUp, signal: AbortSignal) {
  tell(diagramId, 0);
  useCleaning.setState({ failed: undefined });
  // A copy moves to the worker; one that was closed in the meantime cannot be copied, and a newer one comes.
  const picture = await createImageBitmap(source).catch(() => undefined);
  if (!picture) return undefined;
  const answer = await cleanWork.call(
    'clean',
    { picture, how },
    { signal, transfer: [picture], onProgress: (share) => tell(diagramId, share) },
  );
  if (signal.aborted) return answer.kind === 'cleaned' ? answer.levels : undefined;
  tell(diagramId, undefined);
  if (answer.kind === 'cleaned') return answer.levels;
  // Most likely for want of memory: the picture stays as it is.
  useCleaning.setState({ failed: diagramId });
  useTable.getState().setCleanUp(diagramId, undefined);
  return undefined;
}

function tell(diagramId: string, share: number | undefined): void {
  useCleaning.setState((now) => ({ share: { ...now.share, [diagramId]: share } }));
}

function closeAll(cleaned: Cleaned | undefined): void {
  for (const level of cleaned?.levels ?? []) level.close();
}
