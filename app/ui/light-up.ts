/** How long something stays lit up, in ms. */
const LIT_MS = 2500;

/** Brings something into sight, unfolds it, outlines it for a moment and takes the focus to the first thing in it that can be used. */
export function lightUp(target: HTMLElement): void {
  const folded = target.querySelector<HTMLDetailsElement>(':scope > details:not([open])');
  if (folded) folded.open = true;
  const usable = 'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), summary';
  const first = target.matches(usable) ? target : target.querySelector<HTMLElement>(usable);
  first?.focus({ preventScroll: true });
  target.scrollIntoView({ block: 'center' });
  for (const other of document.querySelectorAll<HTMLElement>('[data-lit]')) delete other.dataset.lit;
  target.dataset.lit = '';
  setTimeout(() => delete target.dataset.lit, LIT_MS);
}
