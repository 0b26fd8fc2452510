import type { Methods, Question, Reply } from './call';

/** The worker's side of the line; the global of a dedicated worker is one. */
export interface WorkerPort {
  postMessage(message: unknown, transfer: Transferable[]): void;
  onmessage: ((event: MessageEvent) => void) | null;
}

/** An answer and what of it moves to the page instead of being copied. */
export interface Answered<Answer> {
  readonly answer: Answer;
  readonly transfer?: readonly Transferable[];
}

/** How each method is done. `tell` reports the share done, 0 to 1; `give` hands over what there is so far. */
export type Doing<M extends Methods> = {
  readonly [K in keyof M]: (
    args: M[K]['args'],
    tell: (share: number) => void,
    give: (part: M[K]['part']) => void,
  ) => Promise<Answered<M[K]['answer']>>;
};

/**
 * Answers the calls that come in at a port. What a method throws goes back as the failure of that one call. What must be
 * fetched first is fetched at the first call.
 */
export function serve<M extends Methods>(port: WorkerPort, doing: Doing<M> | (() => Promise<Doing<M>>)): void {
  let known: Promise<Doing<M>> | undefined;
  port.onmessage = async ({ data }: MessageEvent<Question>) => {
    const { id, method, args } = data;
    const reply = (message: Reply, transfer: readonly Transferable[] = []) => port.postMessage(message, [...transfer]);
    try {
      known ??= typeof doing === 'function' ? doing() : Promise.resolve(doing);
      const methods = await known;
      const how = Object.hasOwn(methods, method) ? methods[method] : undefined;
      if (!how) throw new Error(`no method ${method}`);
      const { answer, transfer } = await how(
        args,
        (share) => reply({ id, kind: 'progress', share }),
        (part) => reply({ id, kind: 'part', part }),
      );
      reply({ id, kind: 'answer', answer }, transfer);
    } catch (error) {
      reply({ id, kind: 'failed', message: error instanceof Error ? error.message : String(error) });
    }
  };
}
