import type { Settings } from '../../../electron/contract/settings.ts';
import { Tick } from '../../base/fields.tsx';
import { saySettings } from '../../words/saySettings.ts';
import { changeSetting, SettingsPart } from './SettingsPart.tsx';

/** When clips are measured. */
export function MeasuringSettings({ settings }: { readonly settings: Settings }) {
  return (
    <SettingsPart title={saySettings('measuring')}>
      <Tick checked={settings.measureByItself} onChange={(measureByItself) => changeSetting({ measureByItself })}>
        {saySettings('measureByItself')}
      </Tick>
      <p className="soft">{saySettings('measureByItselfWords')}</p>
    </SettingsPart>
  );
}
