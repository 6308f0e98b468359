import { TriangleAlert } from 'lucide-react';
import { cautionsDue } from '../../engine/cautions/cautionsDue.ts';
import type { Catalogue, Caution } from '../../engine/exercises/catalogue.ts';
import type { Review } from '../../engine/review/review.ts';
import { sayCautions } from '../words/sayCautions.ts';

type SessionCautionsProps = {
  readonly review: Review;
  readonly catalogue: Catalogue;
  /** Folded shows the reasons in one line and opens on demand, where the screen has little room. */
  readonly shown: 'folded' | 'open';
};

/** The cautions that a session calls for, what is most urgent first. They can't be dismissed. */
export function SessionCautions({ review, catalogue, shown }: SessionCautionsProps) {
  const groups = groupsOf(review, catalogue);
  const note = review.session.painNote.trim();
  if (groups.length === 0) return null;
  return (
    <aside aria-label={sayCautions('title')}>
      <details className="caution" open={shown === 'open'}>
        <summary>
          <TriangleAlert aria-hidden="true" />
          <strong>{groups.map(({ reason }) => sayCautions(reason)).join(' · ')}</strong>
          <span className="caution-words">{note !== '' && sayCautions('note', { note })}</span>
          <span className="caution-more">{sayCautions('read')}</span>
        </summary>
        {groups.map(({ reason, cautions }) => (
          <section key={reason}>
            <h2>{reason === 'pain' ? sayCautions('painNote', { note }) : sayCautions(reason)}</h2>
            {cautions.map((caution) => (
              <p key={caution.id}>{caution.text}</p>
            ))}
          </section>
        ))}
      </details>
    </aside>
  );
}

const reasons = ['pain', 'stop', 'minor', 'lifts'] as const;
type Reason = (typeof reasons)[number];

/** Cautions that one thing calls for. */
type Group = { readonly reason: Reason; readonly cautions: readonly Caution[] };

function groupsOf(review: Review, catalogue: Catalogue): readonly Group[] {
  const due = Map.groupBy(
    cautionsDue(review, catalogue).filter(({ applies }) => applies !== 'always'),
    reasonOf,
  );
  return reasons.flatMap((reason) => {
    const cautions = due.get(reason);
    return cautions === undefined ? [] : [{ reason, cautions }];
  });
}

function reasonOf({ applies }: Caution): Reason {
  if (applies.startsWith('pain')) return 'pain';
  return applies === 'stop' || applies === 'minor' ? applies : 'lifts';
}
