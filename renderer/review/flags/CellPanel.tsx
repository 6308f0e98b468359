import { useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { clipOf } from '../../../engine/review/parts.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import { type Criterion, type Rubric, severities } from '../../../engine/rubric/rubric.ts';
import { capitalized } from '../../base/capitalized.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { cursorState } from '../../state/cursorState.ts';
import { visitFlag } from '../commands/flagging.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { columnWords, remarksIn } from '../model/columns.ts';
import { momentWords } from '../model/moments.ts';
import { FaultPicker } from './FaultPicker.tsx';
import { FlagCard } from './FlagCard.tsx';

type CellPanelProps = {
  readonly entry: Entry;
  readonly exercise: Exercise | null;
  readonly rubric: Rubric;
  readonly readOnly: boolean;
};

/** Which set a flag of an exercise with several is on. */
const setWords = (entry: Entry, clipId: string): string =>
  entry.clips.length < 2 ? '' : `, set ${entry.clips.findIndex((clip) => clip.id === clipId) + 1}`;

/** What the chosen cell holds, to be read and edited; or every flag of the exercise. */
export function CellPanel({ entry, exercise, rubric, readOnly }: CellPanelProps) {
  const OneFlag = readOnly ? FlagToRead : FlagCard;
  const cursor = cursorState(
    useShallow(({ criterion, column, namingFlagId }) => ({ criterion, column, namingFlagId })),
  );
  const [shows, setShows] = useState<'cell' | 'all'>('cell');
  const [filter, setFilter] = useState<FlagFilter>(noFilter);
  const naming = entry.flags.find((flag) => flag.id === cursor.namingFlagId);
  const nameOf = (criterion: string): string =>
    rubric.criteria.find((known) => known.id === criterion)?.name ?? criterion;
  if (naming !== undefined && exercise !== null) {
    return <FaultPicker key={naming.id} flag={naming} exercise={exercise} criterionName={nameOf(naming.criterion)} />;
  }
  const { criterion, column } = cursor;
  const clip = column === null ? undefined : clipOf(entry, column.clipId);
  if (criterion === null || column === null || clip === undefined) return null;

  const own = remarksIn(entry.flags, { criterion, column }, clip);
  const ofSet =
    column.rep === 'set' ? [] : remarksIn(entry.flags, { criterion, column: { ...column, rep: 'set' } }, clip);
  const flags = shows === 'all' ? entry.flags.filter((flag) => passes(flag, filter)) : [...own, ...ofSet];
  const judged = rubric.criteria.find((known) => known.id === criterion);
  return (
    <section className="cell-panel" aria-label="Flags">
      <header>
        <h2>{shows === 'all' ? 'All flags' : `${nameOf(criterion)}, ${columnWords(column, entry.clips)}`}</h2>
        <button type="button" className="quiet-button" onClick={() => setShows(shows === 'all' ? 'cell' : 'all')}>
          {shows === 'all' ? 'This cell' : `All flags (${entry.flags.length})`}
        </button>
      </header>
      {shows === 'all' && (
        <FlagFilterBar filter={filter} criteria={rubric.criteria} flags={entry.flags} onChange={setFilter} />
      )}
      <div className="flag-list">
        {flags.map((flag) => (
          <OneFlag
            key={flag.id}
            flag={flag}
            entry={entry}
            exercise={exercise}
            where={shows === 'all' ? `${nameOf(flag.criterion)}${setWords(entry, flag.clip)}` : ''}
          />
        ))}
        {flags.length === 0 && judged !== undefined && shows === 'cell' && <Anchors criterion={judged} />}
        {flags.length === 0 && shows === 'all' && (
          <p className="soft">{entry.flags.length === 0 ? 'No flags yet.' : 'No flag passes the filter.'}</p>
        )}
      </div>
    </section>
  );
}

/** What each severity looks like on film, so that two coaches mark alike. */
function Anchors({ criterion }: { readonly criterion: Criterion }) {
  return (
    <div className="anchors">
      <p>{criterion.question}</p>
      <dl>
        {severities.map((severity) => (
          <div key={severity}>
            <dt>
              <Strokes severity={severity} named="elsewhere" /> {capitalized(severity)}
            </dt>
            <dd>{criterion.anchors[severity]}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

type FlagToReadProps = {
  readonly flag: Flag;
  readonly entry: Entry;
  readonly exercise: Exercise | null;
  /** Criterion and set, '' where they are plain from the place. */
  readonly where: string;
};

const repWords = (reps: Flag['reps']): string =>
  reps === 'set' ? 'whole set' : `${reps.length === 1 ? 'rep' : 'reps'} ${reps.join(', ')}`;

/** A flag of a received session: read-only, with a button to go to its moment. */
function FlagToRead({ flag, entry, exercise, where }: FlagToReadProps) {
  const context = useReview();
  const clip = clipOf(entry, flag.clip);
  const fault = exercise?.faults.find((known) => known.id === flag.fault);
  const words = [capitalized(flag.severity), where, fault?.name ?? '', repWords(flag.reps)];
  return (
    <article className="flag-card" data-testid="flag" data-flag={flag.id}>
      <div className="flag-head">
        <Strokes severity={flag.severity} named="elsewhere" />
        <span>{words.filter((part) => part !== '').join(', ')}</span>
        <button type="button" className="time-button" onClick={() => visitFlag(context, flag)}>
          <span className="visually-hidden">Go to </span>
          {clip === undefined ? '' : momentWords(flag.at, clip)}
        </button>
      </div>
      {flag.note !== '' && <p>{flag.note}</p>}
      {flag.cue !== '' && (
        <p>
          <span className="soft">Cue:</span> {flag.cue}
        </p>
      )}
    </article>
  );
}

/** What the list of all flags is kept to; '' = any. */
type FlagFilter = { readonly criterion: string; readonly severity: string };

const noFilter: FlagFilter = { criterion: '', severity: '' };

/** Whether a flag is shown under a filter. */
const passes = ({ criterion, severity }: Pick<Flag, 'criterion' | 'severity'>, filter: FlagFilter): boolean =>
  (filter.criterion === '' || filter.criterion === criterion) &&
  (filter.severity === '' || filter.severity === severity);

type FlagFilterBarProps = {
  readonly filter: FlagFilter;
  readonly criteria: readonly Criterion[];
  readonly flags: readonly Flag[];
  readonly onChange: (filter: FlagFilter) => void;
};

/** Keeps the list of flags to one criterion or one severity; only what is there can be chosen. */
function FlagFilterBar({ filter, criteria, flags, onChange }: FlagFilterBarProps) {
  const present = new Set(flags.flatMap((flag) => [flag.criterion, flag.severity]));
  return (
    <fieldset className="flag-filter" aria-label="Which flags are shown">
      <select
        aria-label="Criterion"
        value={filter.criterion}
        onChange={(event) => onChange({ ...filter, criterion: event.target.value })}
      >
        <option value="">Every criterion</option>
        {criteria
          .filter(({ id }) => present.has(id))
          .map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
      </select>
      <select
        aria-label="Severity"
        value={filter.severity}
        onChange={(event) => onChange({ ...filter, severity: event.target.value })}
      >
        <option value="">Every severity</option>
        {severities
          .filter((severity) => present.has(severity))
          .map((severity) => (
            <option key={severity} value={severity}>
              {capitalized(severity)}
            </option>
          ))}
      </select>
    </fieldset>
  );
}
