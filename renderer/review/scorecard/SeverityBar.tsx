import type { Severity } from '../../../engine/rubric/rubric.ts';
import { FineTick, Strokes } from '../../base/Strokes.tsx';
import { sayScorecard } from '../../words/sayScorecard.ts';
import { fine, severityCommands } from '../commands/judging.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';

/** The halves of the bar: where it has no room for one row, it has two of the same length. */
const light: readonly Severity[] = ['keep', 'prefer'];
const grave: readonly Severity[] = ['adjust', 'correct', 'stop'];

function SeverityButtons({ of }: { readonly of: readonly Severity[] }) {
  return of.map((severity) => (
    <ReviewButton key={severity} command={severityCommands[severity]} severity={severity}>
      <Strokes severity={severity} named="elsewhere" />
    </ReviewButton>
  ));
}

/** The marks a cell can get, with their keys: the same commands for the mouse. */
export function SeverityBar() {
  return (
    <fieldset className="severity-bar" aria-label={sayScorecard('markCell')}>
      <div className="severity-half">
        <ReviewButton command={fine}>
          <FineTick named="elsewhere" />
        </ReviewButton>
        <SeverityButtons of={light} />
      </div>
      <div className="severity-half">
        <SeverityButtons of={grave} />
      </div>
    </fieldset>
  );
}
