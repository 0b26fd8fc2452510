/**
 * A figure that is typed is taken when its field is left. A page that is hidden, left or closed leaves its fields too, for
 * it may never come back; when it does, she writes on where she was.
 */
export function leaveFieldsWithThePage(): void {
  let left: HTMLElement | undefined;
  const leave = () => {
    const { activeElement } = document;
    if (!(activeElement instanceof HTMLInputElement || activeElement instanceof HTMLTextAreaElement)) return;
    left = activeElement;
    left.blur();
  };
  const goOn = () => {
    if (left?.isConnected && document.activeElement === document.body) left.focus({ preventScroll: true });
    left = undefined;
  };
  document.addEventListener('visibilitychange', () => (document.hidden ? leave() : goOn()));
  window.addEventListener('beforeunload', leave);
  window.addEventListener('pagehide', leave);
}
