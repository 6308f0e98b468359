import type { JudgedMoment, ReviewAgreement } from '../../engine/agreement/compareReviews.ts';
import type { Verdict } from '../../engine/agreement/judgedMoments.ts';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { Review } from '../../engine/review/review.ts';
import { criterionName, exerciseName } from '../../engine/sheet/flagRows.ts';
import type { Moment } from '../../engine/time/moment.ts';
import { points } from '../base/figures.ts';
import { Strokes } from '../base/Strokes.tsx';
import { cursorState } from '../state/cursorState.ts';
import { reviewState } from '../state/reviewState.ts';
import { screenState } from '../state/screenState.ts';
import { sayAgreement } from '../words/sayAgreement.ts';
import { saySeverity } from '../words/saySeverity.ts';

type DifferencesProps = {
  readonly agreement: ReviewAgreement;
  readonly clips: readonly { readonly id: string; readonly name: string }[];
  readonly catalogue: Catalogue;
  readonly firstId: string;
};

/** Opens the first judgement at a moment: its clip on the stage, its cell on the card. */
async function open(firstId: string, moment: JudgedMoment): Promise<void> {
  screenState.getState().go({ kind: 'review', sessionId: firstId });
  await reviewState.getState().open(firstId);
  const { data, show } = reviewState.getState();
  if (data === null) return;
  const { clip: clipId, criterion, rep } = moment;
  show({ clipId, frame: frameOfMoment(data.review, moment) });
  cursorState.getState().moveTo(criterion, { clipId, rep: rep ?? 'set' });
}

/** The moments judged differently, the furthest apart first; each opens where it is. */
export function Differences({ agreement, clips, catalogue, firstId }: DifferencesProps) {
  const { differences } = agreement;
  const where = ({ exercise: id, clip: clipId }: JudgedMoment): string => {
    const clip = clips.find((one) => one.id === clipId)?.name ?? '';
    const exercise = exerciseName(catalogue, id);
    return clip.startsWith(exercise) ? clip : sayAgreement('clipOf', { exercise, clip });
  };
  return (
    <section aria-label={sayAgreement('whereTheyDiffer')}>
      <h2>{sayAgreement('whereTheyDiffer')}</h2>
      {differences.length === 0 && <p className="soft">{sayAgreement('noDifference')}</p>}
      {differences.length > 0 && (
        <table className="agreement-table differences">
          <caption className="visually-hidden">{sayAgreement('differencesCaption')}</caption>
          <thead>
            <tr>
              <th scope="col">{sayAgreement('moment')}</th>
              <th scope="col">{sayAgreement('firstShort')}</th>
              <th scope="col">{sayAgreement('secondShort')}</th>
            </tr>
          </thead>
          <tbody>
            {differences.map((moment) => (
              <tr key={`${moment.clip}/${moment.rep}/${moment.criterion}`}>
                <th scope="row">
                  <button type="button" className="row-button" onClick={() => void open(firstId, moment)}>
                    {sayAgreement('momentOf', {
                      criterion: criterionName(catalogue, moment.criterion, moment.exercise),
                      rep: repWords(moment),
                    })}
                    <span className="soft">{where(moment)}</span>
                  </button>
                </th>
                <Said verdict={moment.first} />
                <Said verdict={moment.second} />
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

/** The rep by the first one's number, and the second's where it differs. */
function repWords({ rep, secondRep }: JudgedMoment): string {
  if (rep === null) return sayAgreement('wholeSet');
  return secondRep === rep || secondRep === null
    ? sayAgreement('rep', { rep })
    : sayAgreement('repOfBoth', { rep, secondRep });
}

function Said({ verdict: { severity, score } }: { readonly verdict: Verdict }) {
  return (
    <td>
      <Strokes severity={severity} named="elsewhere" /> {saySeverity(severity)}{' '}
      <span className="figure soft">{points(score)}</span>
    </td>
  );
}

const frameOf = (moment: Moment | undefined): number | null =>
  moment !== undefined && 'frame' in moment ? moment.frame : null;

/**
 * The frame to show of a judged moment: that of the first flag on its criterion set within its rep, else the start of the
 * rep, else the clip's first frame. A flag on several reps was set in one of them, which need not be this one.
 * @param review the judgement whose clips the moment names
 */
export function frameOfMoment(review: Review, { clip: clipId, criterion, rep }: JudgedMoment): number {
  const entry = review.entries.find(({ clips }) => clips.some(({ id }) => id === clipId));
  const reps = entry?.clips.find(({ id }) => id === clipId)?.reps ?? [];
  const start = frameOf(reps.find(({ index }) => index === rep)?.start) ?? 0;
  const starts = reps.flatMap((one) => frameOf(one.start) ?? []);
  const end = rep === null ? Number.POSITIVE_INFINITY : Math.min(...starts.filter((frame) => frame > start));
  const flags = entry?.flags.filter((flag) => flag.clip === clipId && flag.criterion === criterion) ?? [];
  const within = flags
    .flatMap((flag) => frameOf(flag.at) ?? [])
    .filter((frame) => frame >= start && frame < end)
    .sort((a, b) => a - b);
  return within[0] ?? start;
}
