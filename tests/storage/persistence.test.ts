import { afterEach, expect, it, vi } from 'vitest';

afterEach(() => {
  vi.unstubAllGlobals();
});

it('askToStay asks the browser once, whatever it answers', async () => {
  const persist = vi.fn().mockRejectedValue(new Error('no'));
  vi.stubGlobal('navigator', { storage: { persist } });
  vi.resetModules();
  const { askToStay } = await import('../../app/storage/persistence');
  await askToStay();
  await askToStay();
  expect(persist).toHaveBeenCalledTimes(1);
});

it('askToStay does nothing where there is no one to ask', async () => {
  vi.stubGlobal('navigator', undefined);
  vi.resetModules();
  const { askToStay } = await import('../../app/storage/persistence');
  await expect(askToStay()).resolves.toBeUndefined();
});
