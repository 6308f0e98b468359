import type { Review } from '../../../engine/review/review.ts';
import { mutate } from '../../bridge/mutate.ts';
import { catalogueState } from '../../state/catalogueState.ts';

type RubricPickerProps = { readonly sessionId: string; readonly review: Review };

/** The version of the rubric that judges the session. Choosing another regrades it; undo goes back. */
export function RubricPicker({ sessionId, review }: RubricPickerProps) {
  const versions = catalogueState((state) => state.rubricVersions);
  const version = review.rubric?.version ?? versions[0] ?? 1;
  return (
    <div>
      <dt>Rubric</dt>
      <dd>
        <select
          aria-label="Rubric"
          title="Flags go with their faults; a letter that was sent stays as it is"
          value={version}
          onChange={(event) => void mutate('sessions.rejudge', { sessionId, version: Number(event.target.value) })}
        >
          {versions.map((known) => (
            <option key={known} value={known}>
              version {known}
            </option>
          ))}
        </select>
      </dd>
    </div>
  );
}
