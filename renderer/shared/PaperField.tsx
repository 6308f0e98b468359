import { paperState } from '../state/preferences.ts';
import { sayPreferences } from '../words/sayPreferences.ts';

/** The paper that PDFs are set for. */
export function PaperField({ named = 'visibly' }: { readonly named?: 'visibly' | 'unseen' }) {
  const { paper, choose } = paperState();
  return (
    <label className="field-inline">
      <span {...(named === 'unseen' && { className: 'visually-hidden' })}>{sayPreferences('paper')}</span>
      <select value={paper} onChange={(event) => choose(event.target.value === 'letter' ? 'letter' : 'a4')}>
        <option value="a4">{sayPreferences('a4')}</option>
        <option value="letter">{sayPreferences('usLetter')}</option>
      </select>
    </label>
  );
}
