import { afterEach, describe, expect, it, vi } from 'vitest';
import { createCaller, type WorkerLike } from '../../app/workers/call';
import { type Doing, serve, type WorkerPort } from '../../app/workers/serve';

type Sums = {
  double: { args: number; answer: number };
  fail: { args: string; answer: never };
  hang: { args: number; answer: number };
};

/** A worker in the same thread: both ends copy what they send and hand it over a moment later, as real ones do. */
function pretendWorkers(doing: Doing<Sums>) {
  const started: { ended: boolean; asked: string[]; crash(message: string): void }[] = [];
  const spawn = (): WorkerLike => {
    const about = { ended: false, asked: [] as string[], crash: (_: string) => {} };
    const later = (hear: (() => void) | undefined) => queueMicrotask(() => !about.ended && hear?.());
    const page: WorkerLike = {
      onmessage: null,
      onerror: null,
      onmessageerror: null,
      postMessage(message) {
        const data = structuredClone(message) as { method: string; args: unknown };
        about.asked.push(`${data.method} ${data.args}`);
        later(() => inside.onmessage?.({ data } as MessageEvent));
      },
      terminate() {
        about.ended = true;
      },
    };
    const inside: WorkerPort = {
      onmessage: null,
      postMessage(message) {
        const data = structuredClone(message);
        later(() => page.onmessage?.({ data } as MessageEvent));
      },
    };
    about.crash = (message) => page.onerror?.({ message } as ErrorEvent);
    serve(inside, doing);
    started.push(about);
    return page;
  };
  return { spawn, started };
}

const doing: Doing<Sums> = {
  async double(n, tell) {
    tell(0.5);
    return { answer: 2 * n };
  },
  async fail(why) {
    throw new Error(why);
  },
  hang: () => new Promise(() => {}),
};

afterEach(() => {
  vi.useRealTimers();
});

describe('createCaller', () => {
  it('gives each call its own answer, in one worker', async () => {
    const { spawn, started } = pretendWorkers(doing);
    const caller = createCaller<Sums>(spawn, { restMs: 1000 });
    expect(await Promise.all([caller.call('double', 3), caller.call('double', 11)])).toEqual([6, 22]);
    expect(started.length).toBe(1);
  });

  it('tells the share done before the answer', async () => {
    const caller = createCaller<Sums>(pretendWorkers(doing).spawn, { restMs: 1000 });
    const shares: number[] = [];
    await caller.call('double', 3, { onProgress: (share) => shares.push(share) });
    expect(shares).toEqual([0.5]);
  });

  it('turns what a method throws into a broken answer and goes on with the same worker', async () => {
    const { spawn, started } = pretendWorkers(doing);
    const caller = createCaller<Sums>(spawn, { restMs: 1000 });
    expect(await caller.call('fail', 'no paper')).toEqual({ kind: 'broken', message: 'no paper' });
    expect(await caller.call('double', 4)).toBe(8);
    expect(started.length).toBe(1);
  });

  it('stops a running call by ending its worker, and sends what waits to a new one', async () => {
    const { spawn, started } = pretendWorkers(doing);
    const caller = createCaller<Sums>(spawn, { restMs: 1000 });
    const stopping = new AbortController();
    const hanging = caller.call('hang', 1, { signal: stopping.signal });
    const waiting = caller.call('double', 5);
    stopping.abort();
    expect(await hanging).toEqual({ kind: 'stopped' });
    expect(await waiting).toBe(10);
    expect(started.map(({ ended, asked }) => [ended, asked])).toEqual([
      [true, ['hang 1']],
      [false, ['double 5']],
    ]);
  });

  it('drops a waiting call without disturbing the running one', async () => {
    const { spawn, started } = pretendWorkers(doing);
    const caller = createCaller<Sums>(spawn, { restMs: 1000 });
    const stopping = new AbortController();
    const running = caller.call('double', 6);
    const dropped = caller.call('double', 7, { signal: stopping.signal });
    stopping.abort();
    expect(await dropped).toEqual({ kind: 'stopped' });
    expect(await running).toBe(12);
    expect(started[0]?.asked).toEqual(['double 6']);
  });

  it('asks nothing at all for a signal that was stopped before', async () => {
    const { spawn, started } = pretendWorkers(doing);
    const caller = createCaller<Sums>(spawn, { restMs: 1000 });
    expect(await caller.call('double', 8, { signal: AbortSignal.abort() })).toEqual({ kind: 'stopped' });
    expect(started.length).toBe(0);
  });

  it('answers broken when the worker dies, and starts another', async () => {
    const { spawn, started } = pretendWorkers(doing);
    const caller = createCaller<Sums>(spawn, { restMs: 1000 });
    const hanging = caller.call('hang', 2);
    started[0]?.crash('out of memory');
    expect(await hanging).toEqual({ kind: 'broken', message: 'out of memory' });
    expect(await caller.call('double', 9)).toBe(18);
    expect(started.map(({ ended }) => ended)).toEqual([true, false]);
  });

  it('ends a worker that has had nothing to do for the resting time', async () => {
    vi.useFakeTimers();
    const { spawn, started } = pretendWorkers(doing);
    const caller = createCaller<Sums>(spawn, { restMs: 700 });
    await caller.call('double', 3);
    vi.advanceTimersByTime(699);
    expect(started[0]?.ended).toBe(false);
    vi.advanceTimersByTime(2);
    expect(started[0]?.ended).toBe(true);
    expect(await caller.call('double', 5)).toBe(10);
  });
});

describe('serve', () => {
  it('answers a call of an unknown name with a failure, also for a name every object has', async () => {
    const caller = createCaller<Sums & { toString: { args: number; answer: number } }>(pretendWorkers(doing).spawn, {
      restMs: 1000,
    });
    expect(await caller.call('toString', 1)).toEqual({ kind: 'broken', message: 'no method toString' });
  });
});
