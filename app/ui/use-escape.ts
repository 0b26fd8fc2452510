import { useEffect } from 'react';

/** While it is `active`, Escape leaves what is being done, wherever the focus is; a field keeps its own Escape. */
export function useEscape(active: boolean, leave: () => void): void {
  useEffect(() => {
    if (!active) return;
    const onKey = (event: KeyboardEvent) => {
      const isTyped =
        event.target instanceof HTMLElement &&
        event.target.matches('input:not([type=radio], [type=checkbox]), textarea');
      if (event.key === 'Escape' && !event.defaultPrevented && !isTyped) leave();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [active, leave]);
}
