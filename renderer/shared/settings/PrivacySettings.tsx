import { closingMinutes, type Settings } from '../../../electron/contract/settings.ts';
import { saySettings } from '../../words/saySettings.ts';
import { changeSetting, SettingsPart } from './SettingsPart.tsx';

/** When the window closes by itself. */
export function PrivacySettings({ settings }: { readonly settings: Settings }) {
  const choose = (chosen: string): void => {
    changeSetting({ closeAfterMinutes: closingMinutes.find((minutes) => String(minutes) === chosen) ?? null });
  };
  return (
    <SettingsPart title={saySettings('privacy')}>
      <label className="field-inline">
        <span>{saySettings('closeAfter')}</span>
        <select value={settings.closeAfterMinutes ?? ''} onChange={(event) => choose(event.target.value)}>
          <option value="">{saySettings('closeNever')}</option>
          {closingMinutes.map((minutes) => (
            <option key={minutes} value={minutes}>
              {saySettings('closeAfterMinutes', { count: minutes })}
            </option>
          ))}
        </select>
      </label>
      <p className="soft">{saySettings('closeAfterWords')}</p>
    </SettingsPart>
  );
}
