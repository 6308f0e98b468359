import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { ViewRead } from '../../../engine/motion/measurement.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import { sayJudgedFromHere, sayViewWithAzimuth } from '../../../engine/wording/sayView.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import { takeView } from '../commands/measuring.ts';
import { ReviewButton, useReview } from '../commands/ReviewDeskProvider.tsx';

type ViewLineProps = {
  /** As the joints show it. */
  readonly read: ViewRead | null;
  readonly clip: Clip;
  readonly exercise: Exercise | null;
};

/** Where the camera stands as the joints show it, what can be judged from there, and a button that makes it the clip's view. */
export function ViewLine({ read, clip, exercise }: ViewLineProps) {
  const catalogue = useReview().stage?.catalogue;
  const language = deskLanguage((state) => state.language);
  const view = clip.view ?? read?.view ?? null;
  if (view === null) return null;
  const nameOf = (id: string): string => (catalogue ? criterionName(catalogue, id, exercise?.id) : id);
  return (
    <div className="view-line" data-testid="view-line">
      {read !== null && (
        <p className="soft">{sayMeasures('filmedFrom', { view: sayViewWithAzimuth(read, language) })}</p>
      )}
      {exercise !== null && <p className="soft">{sayJudgedFromHere({ exercise, view, nameOf }, language)}.</p>}
      {read !== null && read.view !== clip.view && (
        <p className="measure-acts">
          <ReviewButton command={takeView} words={sayMeasures('useAsView')} />
        </p>
      )}
    </div>
  );
}
