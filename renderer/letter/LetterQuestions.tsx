import { Dialog, FormDialog } from '../base/Dialog.tsx';
import { PhraseSettings } from '../shared/settings/PhraseSettings.tsx';
import type { Letter } from '../state/letterState.ts';
import { settingsState } from '../state/settingsState.ts';
import { sayLetter } from '../words/sayLetter.ts';
import { saySettings } from '../words/saySettings.ts';
import { sendLetter } from './letterCommands.ts';
import { letterDesk } from './letterDesk.ts';

/** What the screen of a letter asks over it: whether to send the same again, and which phrases there are. */
export function LetterQuestions({ sessionId, letter }: { readonly sessionId: string; readonly letter: Letter }) {
  const asking = letterDesk((state) => state.asking);
  const settings = settingsState((state) => state.settings);
  const close = (): void => letterDesk.setState({ asking: 'nothing' });
  const version = letter.sent.length;
  switch (asking) {
    case 'nothing':
      return null;
    case 'sendAgain':
      return (
        <FormDialog
          title={sayLetter('sendAgainTitle')}
          doing={sayLetter('sendAgain', { version: version + 1 })}
          onDone={() => sendLetter(sessionId)}
          onClose={close}
        >
          <p>{sayLetter('sendAgainWords', { version })}</p>
        </FormDialog>
      );
    case 'phrases':
      return (
        <Dialog title={saySettings('phrases')} onClose={close} size="wide">
          <div className="settings">{settings !== null && <PhraseSettings settings={settings} titled="unseen" />}</div>
        </Dialog>
      );
  }
}
