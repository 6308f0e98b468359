import { TriangleAlert } from 'lucide-react';
import type { Caution } from '../../engine/exercises/caution.ts';

type CautionNoticeProps = {
  readonly cautions: readonly Caution[];
  readonly why: string;
  /** One line of what it is about. */
  readonly words: string;
  /** Folded shows that line and opens on demand, where the screen has little room. */
  readonly shown: 'folded' | 'open';
};

/** Cautions that apply here, never to be dismissed. */
export function CautionNotice({ cautions, why, words, shown }: CautionNoticeProps) {
  if (cautions.length === 0) return null;
  return (
    <aside aria-label="Cautions">
      <details className="caution" open={shown === 'open'}>
        <summary>
          <TriangleAlert aria-hidden="true" />
          <strong>{why}.</strong>
          <span className="caution-words">{words}</span>
          <span className="caution-more">Read the cautions</span>
        </summary>
        {cautions.map((caution) => (
          <p key={caution.id}>{caution.text}</p>
        ))}
      </details>
    </aside>
  );
}
