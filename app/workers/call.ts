/**
 * Calling a worker as if it were a function: one call at a time, with progress, and stopped by ending the worker, which
 * is the only way that always works. A new worker is started for the next call, so nothing that waits is lost.
 */

/** What a worker can be asked: each method with what it takes, what it answers, and what it gives on the way if anything. */
export type Methods = Readonly<
  Record<string, { readonly args: unknown; readonly answer: unknown; readonly part?: unknown }>
>;

/** The call was stopped by its signal. */
export interface Stopped {
  readonly kind: 'stopped';
}

/** The worker failed: its script could not be loaded, it threw, or it ran out of memory. */
export interface Broken {
  readonly kind: 'broken';
  readonly message: string;
}

/** The page's side of a worker; a real `Worker` is one. */
export interface WorkerLike {
  postMessage(message: unknown, transfer: Transferable[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
}

export interface CallOptions<Part = never> {
  /** What moves to the worker instead of being copied. */
  readonly transfer?: readonly Transferable[];
  /** Told the share done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
  /** Given what the worker has so far. */
  readonly onPart?: (part: Part) => void;
  readonly signal?: AbortSignal;
}

export interface Question {
  readonly id: number;
  readonly method: string;
  readonly args: unknown;
}

export type Reply =
  | { readonly id: number; readonly kind: 'progress'; readonly share: number }
  | { readonly id: number; readonly kind: 'part'; readonly part: unknown }
  | { readonly id: number; readonly kind: 'answer'; readonly answer: unknown }
  | { readonly id: number; readonly kind: 'failed'; readonly message: string };

interface Waiting extends Question {
  readonly options: CallOptions<unknown>;
  readonly settle: (answer: unknown) => void;
}

/** Calls one kind of worker. Never rejects: what goes wrong is part of the answer. */
export interface Caller<M extends Methods> {
  call<K extends keyof M & string>(
    method: K,
    args: M[K]['args'],
    options?: CallOptions<M[K]['part']>,
  ): Promise<M[K]['answer'] | Stopped | Broken>;
}

/**
 * A caller of the workers that `spawn` makes. Calls wait for one another in the order they came. A worker that has had
 * nothing to do for `restMs` is ended, which gives its memory back; it is started again when needed.
 */
export function createCaller<M extends Methods>(spawn: () => WorkerLike, options: { restMs: number }): Caller<M> {
  const queue: Waiting[] = [];
  let running: Waiting | undefined;
  let worker: WorkerLike | undefined;
  let resting: ReturnType<typeof setTimeout> | undefined;
  let lastId = 0;

  function endWorker() {
    worker?.terminate();
    worker = undefined;
  }

  function settleRunning(answer: unknown) {
    const ended = running;
    running = undefined;
    ended?.settle(answer);
    next();
  }

  function breakRunning(message: string) {
    endWorker();
    settleRunning({ kind: 'broken', message } satisfies Broken);
  }

  function startedWorker(): WorkerLike {
    if (worker) return worker;
    const started = spawn();
    started.onmessage = ({ data }: MessageEvent<Reply>) => {
      if (worker !== started || data.id !== running?.id) return;
      if (data.kind === 'progress') running.options.onProgress?.(data.share);
      else if (data.kind === 'part') running.options.onPart?.(data.part);
      else if (data.kind === 'answer') settleRunning(data.answer);
      else settleRunning({ kind: 'broken', message: data.message } satisfies Broken);
    };
    started.onerror = (event) => worker === started && breakRunning(event.message ?? '');
    started.onmessageerror = () => worker === started && breakRunning('');
    worker = started;
    return started;
  }

  function next() {
    if (running) return;
    clearTimeout(resting);
    running = queue.shift();
    if (!running) {
      resting = setTimeout(endWorker, options.restMs);
      return;
    }
    const { id, method, args } = running;
    try {
      startedWorker().postMessage({ id, method, args } satisfies Question, [...(running.options.transfer ?? [])]);
    } catch (error) {
      breakRunning(String(error));
    }
  }

  function stop(waiting: Waiting) {
    const stopped: Stopped = { kind: 'stopped' };
    if (waiting === running) {
      endWorker();
      settleRunning(stopped);
      return;
    }
    const place = queue.indexOf(waiting);
    if (place < 0) return;
    queue.splice(place, 1);
    waiting.settle(stopped);
  }

  return {
    call(method, args, callOptions = {}) {
      const { signal } = callOptions;
      if (signal?.aborted) return Promise.resolve({ kind: 'stopped' });
      return new Promise((resolve) => {
        const onAbort = () => stop(waiting);
        const settle = (answer: unknown) => {
          signal?.removeEventListener('abort', onAbort);
          resolve(answer as M[typeof method]['answer']);
        };
        lastId += 1;
        const waiting: Waiting = { id: lastId, method, args, options: callOptions as CallOptions<unknown>, settle };
        signal?.addEventListener('abort', onAbort);
        queue.push(waiting);
        next();
      });
    },
  };
}
