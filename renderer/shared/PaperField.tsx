import { paperState } from '../state/preferences.ts';

/** The paper that PDFs are set for. */
export function PaperField({ label = 'shown' }: { readonly label?: 'shown' | 'hidden' }) {
  const { paper, choose } = paperState();
  return (
    <label className="field-inline">
      <span {...(label === 'hidden' && { className: 'visually-hidden' })}>Paper</span>
      <select value={paper} onChange={(event) => choose(event.target.value === 'letter' ? 'letter' : 'a4')}>
        <option value="a4">A4</option>
        <option value="letter">US Letter</option>
      </select>
    </label>
  );
}
