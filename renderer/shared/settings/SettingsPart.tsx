import type { ReactNode } from 'react';
import type { Settings } from '../../../electron/contract/settings.ts';
import { mutate } from '../../bridge/mutate.ts';

type SettingsPartProps = {
  readonly title: string;
  /** A dialog of this part alone says its title already. */
  readonly titled?: 'visibly' | 'unseen';
  readonly children: ReactNode;
};

/** One part of the settings: what belongs together, under its heading. */
export function SettingsPart({ title, titled = 'visibly', children }: SettingsPartProps) {
  return (
    <fieldset className="settings-part" data-titled={titled}>
      <legend {...(titled === 'unseen' && { className: 'visually-hidden' })}>{title}</legend>
      {children}
    </fieldset>
  );
}

/** Keeps a setting; the others stay as they are. */
export const changeSetting = (change: Partial<Settings>): void => void mutate('settings.change', change);
