import { registerSW } from 'virtual:pwa-register';
import { create } from 'zustand';
import { otherWindows } from './windows';

interface Update {
  /** A newer Inchsquare has been fetched and waits; this changes to it and loads the page anew. */
  readonly take: (() => void) | undefined;
  /** `elsewhere`: another window has changed to it, and parts that this page has not fetched yet may be gone. */
  readonly taken: 'here' | 'elsewhere' | undefined;
}

export const useUpdate = create<Update>(() => ({ take: undefined, taken: undefined }));

/** Keeps the whole workbench on this device for use without a network, and offers newer versions instead of forcing them. */
export function keepOffline(): void {
  const change = registerSW({
    onNeedRefresh: () => useUpdate.setState({ take: () => void change(true) }),
    // A window is never loaded anew amid its work because another one was.
    onNeedReload: () => undefined,
    // Without a store for it, in a private window say, the workbench simply needs the network at the next start.
    onRegisterError: () => undefined,
  });
  const worker = globalThis.navigator.serviceWorker;
  let isFirst = !worker?.controller;
  worker?.addEventListener('controllerchange', () => {
    if (useUpdate.getState().taken === 'here') location.reload();
    else if (!isFirst) useUpdate.setState({ taken: 'elsewhere' });
    isFirst = false;
  });
}

/** Changes to the newer one, unless another window is open, which would be left with half of either. */
export async function takeUpdate(): Promise<'taken' | 'other-windows'> {
  if ((await otherWindows()) > 0) return 'other-windows';
  useUpdate.setState({ taken: 'here' });
  useUpdate.getState().take?.();
  return 'taken';
}
