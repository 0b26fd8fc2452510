import { useKept } from '../state/kept-store';
import { useTable } from '../state/table-store';
import { today } from '../state/today';
import { openFromShelf, startDemo } from './bring-in';
import { isReplayed, listShelf } from './shelf';

/**
 * What is on the table when the page opens: the demo garment when the address asks for it and there is nothing on the
 * shelf yet, else the garment she had on it last. A browser that keeps nothing simply shows the shelf.
 */
export async function openFromAddress(): Promise<void> {
  try {
    const [last] = await listShelf();
    if (last) {
      const opened = await openFromShelf(last.id);
      if (isReplayed(opened)) useTable.getState().goTo('draft');
      else useKept.setState({ unopened: { name: last.name, why: opened.kind } });
    } else if (location.hash === '#demo') {
      await startDemo(today());
      useTable.getState().goTo('draft');
    }
  } catch {
    useTable.getState().goTo('shelf');
  }
}
