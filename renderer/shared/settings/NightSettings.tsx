import { mostDaysPromised, type Settings } from '../../../electron/contract/settings.ts';
import { NumberField } from '../../base/fields.tsx';
import { saySettings } from '../../words/saySettings.ts';
import { changeSetting, SettingsPart } from './SettingsPart.tsx';

const isPromise = (days: number): boolean => Number.isInteger(days) && days >= 1 && days <= mostDaysPromised;

/** How soon a session is promised back. */
export function NightSettings({ settings }: { readonly settings: Settings }) {
  return (
    <SettingsPart title={saySettings('night')}>
      <NumberField
        label={saySettings('daysPromised')}
        shown={String(settings.daysPromised)}
        unit={saySettings('days', { count: settings.daysPromised })}
        accepts={isPromise}
        onSave={(daysPromised) => changeSetting({ daysPromised })}
      />
      <p className="soft">{saySettings('daysPromisedWords')}</p>
    </SettingsPart>
  );
}
