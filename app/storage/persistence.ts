let asked = false;

/**
 * Asks the browser, once, not to clear this page's store when room runs short. It may say no, and a yes is no promise:
 * the file is what lasts.
 */
export async function askToStay(): Promise<void> {
  if (asked) return;
  asked = true;
  try {
    await globalThis.navigator?.storage?.persist?.();
  } catch {
    // A browser that cannot be asked keeps things as long as it likes.
  }
}
