import type { NoRoomOnFold, NotAcross } from '../../core/cloth/lay-search';
import type { Lay, LayTask } from '../../core/cloth/lay-task';
import type { Piecing } from '../../core/cloth/piecing';
import { createCaller } from './call';

/** What is laid, how long for, and from where. Chance begins at the seed. */
export interface LayPlan {
  readonly task: LayTask;
  readonly seconds: number;
  readonly seed: number;
  /** A lay to begin from; it is never made worse. */
  readonly from?: Lay;
}

/** What the lay worker can be asked. */
export type LayCalls = {
  /** Lays, giving each better lay as it is found. `shortest` where no lay can be shorter. */
  readonly lay: {
    readonly args: LayPlan;
    readonly part: Lay;
    readonly answer:
      | { readonly kind: 'laid'; readonly lay: Lay; readonly shortest: boolean }
      | NotAcross
      | NoRoomOnFold;
  };
  /** Lays several things one after another, each as long, and gives each as it is done. */
  readonly beside: {
    readonly args: {
      readonly tasks: readonly { readonly key: string; readonly task: LayTask }[];
      readonly seconds: number;
    };
    readonly part: { readonly key: string; readonly lay: Lay | undefined };
    readonly answer: { readonly kind: 'done' };
  };
  /** Looks for a join with which everything goes into the length at hand. */
  readonly join: {
    readonly args: {
      readonly task: LayTask;
      readonly lay: Lay;
      readonly lengthAtHand: number;
      readonly allowance: number;
      readonly seed: number;
    };
    readonly answer:
      | { readonly kind: 'join'; readonly piecing: Piecing; readonly lay: Lay }
      | { readonly kind: 'none' };
  };
};

/** A worker that has rested this long is ended. */
const REST_MS = 30_000;

/** Lays pieces on cloth off the main thread. */
export const layWork = createCaller<LayCalls>(
  () => new Worker(new URL('./lay.worker.ts', import.meta.url), { type: 'module' }),
  { restMs: REST_MS },
);
