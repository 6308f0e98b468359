import { useEffect } from 'react';
import { Dialog } from '../../base/Dialog.tsx';
import { settingsState } from '../../state/settingsState.ts';
import { saySettings } from '../../words/saySettings.ts';
import { LanguageField } from '../LanguageField.tsx';
import { PaperField } from '../PaperField.tsx';
import { ThemeField } from '../ThemeField.tsx';
import { MeasuringSettings } from './MeasuringSettings.tsx';
import { NightSettings } from './NightSettings.tsx';
import { PhraseSettings } from './PhraseSettings.tsx';
import { PrivacySettings } from './PrivacySettings.tsx';
import { SettingsPart } from './SettingsPart.tsx';

/** What is set for the library, part by part, and how the desk looks. Each change is kept at once. */
export function SettingsDialog({ onClose }: { readonly onClose: () => void }) {
  const settings = settingsState((state) => state.settings);
  useEffect(() => void settingsState.getState().refresh(), []);
  return (
    <Dialog title={saySettings('title')} onClose={onClose} size="wide">
      <div className="settings">
        {settings !== null && (
          <>
            <NightSettings settings={settings} />
            <MeasuringSettings settings={settings} />
            <PrivacySettings settings={settings} />
            <PhraseSettings settings={settings} />
          </>
        )}
        <SettingsPart title={saySettings('desk')}>
          <div className="desk-preferences">
            <LanguageField named="visibly" />
            <ThemeField named="visibly" />
            <PaperField />
          </div>
        </SettingsPart>
      </div>
    </Dialog>
  );
}
