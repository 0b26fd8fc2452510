import './ui/fonts.css';
import './ui/tokens.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App';
import { RoomGuard } from './shell/room-guard';
import { keepOffline } from './shell/updates';
import { openFromAddress } from './storage/open-from-address';
import { startLook } from './ui/look';
import { shellWords } from './words/shell';

const place = document.getElementById('app');
if (!place) throw new Error('index.html has no place for the app');
startLook();
void openFromAddress();
keepOffline();
createRoot(place).render(
  <StrictMode>
    <RoomGuard room={shellWords.product} sentence={shellWords.brokenAll}>
      <App />
    </RoomGuard>
  </StrictMode>,
);
