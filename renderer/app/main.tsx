import { StrictMode } from 'react';
import { createRoot } from './create-root.ts';
import '@fontsource/atkinson-hyperlegible-next/latin-400.css';
import '@fontsource/atkinson-hyperlegible-next/latin-600.css';
import '@fontsource/atkinson-hyperlegible-next/latin-700.css';
import '@fontsource/atkinson-hyperlegible-next/latin-ext-400.css';
import '@fontsource/atkinson-hyperlegible-mono/latin-400.css';
import '@fontsource/atkinson-hyperlegible-mono/latin-600.css';
import './tokens.css';
import './base.css';
import { isBookOrdered, makeOrderedBook } from '../print/book/ordered-book.ts';
import { browserKeptWork } from '../shell/kept/browser-kept-work.ts';
import { desktopKeptWork } from '../shell/kept/desktop-kept-work.ts';
import { openStudyWorker } from '../worker/open-study-worker.ts';
import { openWorker } from '../worker/open-worker.ts';
import { runStudies } from '../worker/run-studies.ts';
import { runSurveys } from '../worker/run-surveys.ts';
import { App } from './App.tsx';
import { acceptDroppedFiles } from './document/accept-dropped-files.ts';
import { followBrowser, followFile, followShell } from './document/follow-shell.ts';
import { keepKinds } from './document/keep-kinds.ts';
import { keepWork } from './document/keep-work.ts';
import { offerKept } from './document/offer-kept.ts';
import { listenToClipboard } from './editing/listen-to-clipboard.ts';
import { listenToKeys } from './editing/listen-to-keys.ts';
import { followTheme } from './rail/follow-theme.ts';
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
followFile();
runSurveys(openWorker);
runStudies(openStudyWorker);
if (isBookOrdered()) void makeOrderedBook();
else if (window.stationwright) {
  const work = desktopKeptWork(window.stationwright);
  keepWork(work);
  void followShell(window.stationwright, work);
} else {
  const work = browserKeptWork();
  keepWork(work);
  followBrowser();
  void offerKept(work, true);
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
