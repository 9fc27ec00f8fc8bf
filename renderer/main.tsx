import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/App.tsx';
import { createDeskWindow, DeskWindowProvider } from './app/desk-window.ts';
import { pickDesk } from './desk/pick-desk.ts';
import './look/paper.css';
import { createWorkClient } from './worker/client.ts';

const worker = new Worker(new URL('./worker/worker.ts', import.meta.url), { type: 'module' });
const deskWindow = createDeskWindow(pickDesk(), createWorkClient(worker));
const place = document.getElementById('window');
if (place === null) throw new Error('the page has no place for the window');
createRoot(place).render(
  <StrictMode>
    <DeskWindowProvider value={deskWindow}>
      <App />
    </DeskWindowProvider>
  </StrictMode>,
);
