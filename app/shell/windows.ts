/** The program as it is served from here; another copy on the same host is another. */
const LOCK = () => `inchsquare window ${new URL('.', location.href).pathname}`;

/** Lets other windows know, until this one is closed, that it is open. */
export function standOpen(): void {
  void globalThis.navigator?.locks?.request(LOCK(), { mode: 'shared' }, () => new Promise<never>(() => undefined));
}

/** How many other windows of the program are open in this browser; none where the browser cannot say. */
export async function otherWindows(): Promise<number> {
  const known = await globalThis.navigator?.locks?.query();
  const open = known?.held?.filter(({ name }) => name === LOCK()).length ?? 0;
  return Math.max(0, open - 1);
}
