import { useGuide } from '../state/guide-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { guideWords as words } from '../words/guide/guide';
import { howToOf } from './pages';

/** Opens the book at the page that speaks of the room one is in. */
export function GuideButton() {
  const room = useTable((table) => table.room);
  const isOpen = useGuide((guide) => guide.page !== undefined);
  const { open, close } = useGuide.getState();
  return (
    <Button
      tone="quiet"
      icon="book"
      label={words.openLabel}
      pressed={isOpen}
      onPress={() => (isOpen ? close() : open(howToOf[room] ?? 'list'))}
    >
      {words.open}
    </Button>
  );
}
