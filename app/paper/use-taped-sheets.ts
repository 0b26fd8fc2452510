import { useEffect, useState } from 'react';
import type { PaperChoice } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import type { Under } from '../../core/paper/placed-piece';
import type { TapedSheets } from '../../core/paper/taped-sheets';
import { pdfWork } from '../workers/pdf-calls';

/** Where the pieces lie on pages: the last that was found, and how far a new search is. */
export interface Laid {
  readonly found: TapedSheets | undefined;
  /** The share done while it is worked out; `failed` when it could not be. */
  readonly state: number | 'found' | 'failed';
}

/** Finds in a worker where pieces lie on pages, anew whenever they or the paper change. */
export function useTapedSheets(pieces: readonly Piece[], paper: PaperChoice, under: Under): Laid {
  const [laid, setLaid] = useState<Laid & { readonly key: string }>({ key: '', found: undefined, state: 0 });
  const key = JSON.stringify([pieces, paper, under]);
  // The pieces of one key are the same in all that is asked here, whichever objects they are.
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was asked is told by the key
  useEffect(() => {
    const stopper = new AbortController();
    const { signal } = stopper;
    const onProgress = (share: number) => setLaid((had) => ({ ...had, state: share }));
    setLaid((had) => ({ ...had, state: 0 }));
    void pdfWork.call('lay', { pieces, paper, under }, { signal, onProgress }).then((answer) => {
      if (signal.aborted) return;
      if (answer.kind === 'laid') setLaid({ key, found: answer, state: 'found' });
      else setLaid((had) => ({ ...had, state: 'failed' }));
    });
    return () => stopper.abort();
  }, [key]);
  return laid.key === key || laid.state === 'failed'
    ? laid
    : { ...laid, state: laid.state === 'found' ? 0 : laid.state };
}
