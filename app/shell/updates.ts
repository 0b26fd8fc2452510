import { registerSW } from 'virtual:pwa-register';
import { create } from 'zustand';

/** A newer Inchsquare that has been fetched and waits; `take` changes to it and loads the page anew. */
export const useUpdate = create<{ readonly take: (() => void) | undefined }>(() => ({ take: undefined }));

/** Keeps the whole workbench on this device for use without a network, and offers newer versions instead of forcing them. */
export function keepOffline(): void {
  const take = registerSW({
    onNeedRefresh: () => useUpdate.setState({ take: () => void take(true) }),
    // Without a store for it, in a private window say, the workbench simply needs the network at the next start.
    onRegisterError: () => undefined,
  });
}
