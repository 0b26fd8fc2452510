import type { FileReading } from '../../core/files/file-reading';
import type { FileUnit } from '../../core/files/svg-units';
import type { Garment } from '../../core/garment/garment';
import { language } from '../words/language';
import { createCaller } from './call';

/** What the worker for drawing files can be asked. */
export type FilesCalls = {
  readonly write: {
    readonly args: {
      readonly garment: Garment;
      readonly kind: 'svg' | 'dxf';
      /** Of a DXF; an SVG is in mm. */
      readonly units: 'mm' | 'in';
      readonly today: string;
    };
    /** Nothing when the garment has no piece. */
    readonly answer: { readonly kind: 'written'; readonly text: string | undefined };
  };
  readonly read: {
    readonly args: { readonly file: Blob; readonly unit?: FileUnit };
    readonly answer: FileReading;
  };
};

/** A worker that has rested this long is ended. */
const REST_MS = 20_000;

/** Writes and reads drawing files off the main thread, so that none however large or hostile can hold it up. */
export const filesWork = createCaller<FilesCalls>(
  () => new Worker(new URL('./files.worker.ts', import.meta.url), { type: 'module', name: language() }),
  { restMs: REST_MS },
);
