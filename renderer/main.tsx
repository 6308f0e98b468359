import './state/preferences.ts';
import './style/index.css';
import { StrictMode, useEffect } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { allCommands } from './allCommands.ts';
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
function leave(): void {
  void saveDrafts();
  void saveLetterDrafts();
  saveLastPosition();
}

window.addEventListener('pagehide', leave);
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') leave();
});

registerCommands(allCommands);
listen();
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
