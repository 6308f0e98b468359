import type { Params } from '../../electron/contract/requests.ts';
import { mutate } from '../bridge/mutate.ts';
import type { Letter } from '../state/letterState.ts';

type Style = Letter['style'];

const choices: { readonly [K in keyof Style]: { readonly label: string; readonly words: Record<Style[K], string> } } = {
  length: { label: 'Length', words: { full: 'Full', short: 'Short' } },
  tone: { label: 'Tone', words: { plain: 'Plain', warm: 'Warm', direct: 'Direct' } },
  language: { label: 'Language', words: { en: 'English', de: 'Deutsch' } },
};

type LetterStyleBarProps = { readonly sessionId: string; readonly style: Style; readonly voice: 'coach' | 'self' };

/** How the letter is written; a self-review has one tone. */
export function LetterStyleBar({ sessionId, style, voice }: LetterStyleBarProps) {
  const set = (change: Params<'letters.style'>['style']) => void mutate('letters.style', { sessionId, style: change });
  const shown = (['length', 'tone', 'language'] as const).filter((name) => name !== 'tone' || voice === 'coach');
  return (
    <fieldset className="letter-style" aria-label="How the letter is written">
      {shown.map((name) => (
        <label key={name}>
          {choices[name].label}{' '}
          <select value={style[name]} onChange={(event) => set({ [name]: event.target.value })}>
            {Object.entries(choices[name].words).map(([value, words]) => (
              <option key={value} value={value}>
                {words}
              </option>
            ))}
          </select>
        </label>
      ))}
    </fieldset>
  );
}
