import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import '@fontsource/atkinson-hyperlegible-next/latin-400.css';
import '@fontsource/atkinson-hyperlegible-next/latin-600.css';
import '@fontsource/atkinson-hyperlegible-next/latin-700.css';
import '@fontsource/atkinson-hyperlegible-next/latin-ext-400.css';
import '@fontsource/atkinson-hyperlegible-mono/latin-400.css';
import '@fontsource/atkinson-hyperlegible-mono/latin-600.css';
import './tokens.css';
import './base.css';
import { isBookOrdered, makeOrderedBook } from '../print/book/ordered-book.ts';
import { openWorker } from '../worker/open-worker.ts';
import { runSurveys } from '../worker/survey-runner.ts';
import { App } from './App.tsx';
import { acceptDroppedFiles } from './document/drop-files.ts';
import { followBrowser, followShell } from './document/follow-shell.ts';
import { keepDraft } from './document/keep-draft.ts';
import { keepKinds } from './document/keep-kinds.ts';
import { listenToClipboard } from './editing/clipboard.ts';
import { listenToKeys } from './editing/keys.ts';
import { followTheme } from './rail/theme.ts';
import { ScreenGuard } from './trouble/ScreenGuard.tsx';
import { listenToErrors } from './trouble/screen-errors.ts';
// Last, as it takes away what the others show.
import '../print/print.css';

listenToErrors();
followTheme();
keepKinds();
listenToKeys();
listenToClipboard();
acceptDroppedFiles();
runSurveys(openWorker);
if (isBookOrdered()) void makeOrderedBook();
else if (window.stationwright) void followShell(window.stationwright);
else {
  followBrowser();
  void keepDraft();
}

const root = document.getElementById('root');
if (!root) throw new Error('the page has no root');
createRoot(root).render(
  <StrictMode>
    <ScreenGuard>
      <App />
    </ScreenGuard>
  </StrictMode>,
);
