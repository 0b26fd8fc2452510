import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App';
import { leaveFieldsWithThePage } from './shell/leave-fields';
import { RoomGuard } from './shell/room-guard';
import { keepOffline } from './shell/updates';
import { standOpen } from './shell/windows';
import { openFromAddress } from './storage/open-from-address';
import { language } from './words/language';
import { shellWords } from './words/shell';

/** Puts the workbench on the page, in the language spoken. */
export function open(): void {
  const place = document.getElementById('app');
  if (!place) throw new Error('index.html has no place for the app');
  document.documentElement.lang = language();
  void openFromAddress();
  standOpen();
  leaveFieldsWithThePage();
  keepOffline();
  createRoot(place).render(
    <StrictMode>
      <RoomGuard room={shellWords.product} sentence={shellWords.brokenAll}>
        <App />
      </RoomGuard>
    </StrictMode>,
  );
}
