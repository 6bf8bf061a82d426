import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';

const root = document.getElementById('root');
if (root)
  createRoot(root).render(
    <StrictMode>
      <h1>Stationwright</h1>
    </StrictMode>,
  );
