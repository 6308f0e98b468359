import { Inbox, TriangleAlert } from 'lucide-react';
import type { Caution } from '../../engine/exercises/catalogue.ts';
import type { Review } from '../../engine/review/review.ts';

type SessionCautionsProps = {
  readonly review: Review;
  readonly cautions: readonly Caution[];
  /** Folded shows one line each and opens on demand, where the screen has little room. */
  readonly shown: 'folded' | 'open';
};

/** The cautions that apply to a session: where pain was noted and where a stop flag stands. They can't be dismissed. */
export function SessionCautions({ review, cautions, shown }: SessionCautionsProps) {
  return applyingTo(review, cautions).map((applying) => (
    <CautionNotice key={applying.why} applying={applying} shown={shown} />
  ));
}

/** Why some cautions apply, in a word or two and in a sentence, and which these are. */
type Applying = { readonly why: string; readonly words: string; readonly cautions: readonly Caution[] };

function applyingTo(review: Review, cautions: readonly Caution[]): readonly Applying[] {
  const painNote = review.session.painNote.trim();
  const stop = review.entries.some((entry) => entry.flags.some((flag) => flag.severity === 'stop'));
  const applying: Applying[] = [];
  if (painNote !== '') {
    const pain = cautions.filter((caution) => caution.applies === 'pain');
    applying.push({ why: 'The trainee noted pain', words: `“${painNote}”`, cautions: pain });
  }
  if (stop) {
    const stopping = cautions.filter((caution) => caution.applies === 'stop');
    applying.push({ why: 'A stop flag stands', words: 'Say so before anything else.', cautions: stopping });
  }
  return applying;
}

type CautionNoticeProps = { readonly applying: Applying; readonly shown: SessionCautionsProps['shown'] };

function CautionNotice({ applying: { why, words, cautions }, shown }: CautionNoticeProps) {
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

/** Above a session that came from another desk. */
export function ReceivedNote() {
  return (
    <p className="received-note" role="note">
      <Inbox aria-hidden="true" />
      <span>
        <strong>Received from another desk.</strong> You see it as it was handed over; nothing in it can be changed
        here.
      </span>
    </p>
  );
}
