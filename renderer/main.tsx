import './state/preferences.ts';
import './style/index.css';
import { StrictMode, useEffect } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { allCommands } from './allCommands.ts';
import { statusState } from './bridge/statusState.ts';
import { closeWhenUnused } from './closeUnused.ts';
import { registerCommands } from './commands/command.ts';
import { saveDrafts, saveLetterDrafts } from './drafts/drafts.ts';
import { listen } from './listen.ts';
import { saveLastPosition } from './review/useReviewLife.ts';
import { tellDamagedLists } from './state/damagedLists.ts';
import { jobsState } from './state/jobsState.ts';
import { libraryState } from './state/libraryState.ts';
import { settingsState } from './state/settingsState.ts';
import { deskLanguage } from './words/deskLanguage.ts';

/** What must not be lost when the window goes: requests leave the page before it does. */
async function leave(): Promise<void> {
  saveLastPosition();
  await Promise.all([saveDrafts(), saveLetterDrafts()]);
}

/** How often it is looked whether the window is used. */
const lookEveryMs = 5_000;

window.addEventListener('pagehide', () => void leave());
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') void leave();
});

/** Text that could not be saved would be gone with the window. */
function closeIfSaved(): void {
  if (statusState.getState().saving !== 'failed') window.close();
}

registerCommands(allCommands);
listen();
const unused = closeWhenUnused({ close: () => void leave().then(closeIfSaved), nowMs: () => Date.now() });
setInterval(unused.tick, lookEveryMs);
void libraryState
  .getState()
  .refresh()
  .then(() => {
    if (libraryState.getState().library?.kind !== 'open') return;
    void jobsState.getState().refresh();
    void settingsState.getState().refresh();
    void tellDamagedLists();
  });

/** The app in the desk's language; drawn anew when that changes, so that no text of the old one stays. */
function Desk() {
  const language = deskLanguage((state) => state.language);
  useEffect(() => {
    document.documentElement.lang = language;
  }, [language]);
  return <App key={language} />;
}

const root = document.getElementById('root');
if (root !== null) {
  createRoot(root).render(
    <StrictMode>
      <Desk />
    </StrictMode>,
  );
}
