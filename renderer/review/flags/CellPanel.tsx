import { useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { clipOf } from '../../../engine/review/parts.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import { type Criterion, severities } from '../../../engine/rubric/rubric.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { cursorState } from '../../state/cursorState.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { saySeverity } from '../../words/saySeverity.ts';
import { visitFlag } from '../commands/flagging.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { clipsOnCard, columnWords, remarksOfSet, repsWords } from '../model/columns.ts';
import { momentWords } from '../model/moments.ts';
import { FaultPicker } from './FaultPicker.tsx';
import { FlagCard } from './FlagCard.tsx';

type CellPanelProps = {
  readonly entry: Entry;
  readonly exercise: Exercise | null;
  readonly catalogue: Catalogue;
  readonly readOnly: boolean;
};

/** The criterion of a flag, and its set where the exercise has several. */
const whereWords = (criterion: string, { clips }: Entry, clipId: string): string =>
  clips.length < 2 ? criterion : sayFlags('onSet', { criterion, set: clips.findIndex(({ id }) => id === clipId) + 1 });

/** What the chosen cell holds, to be read and edited; or every flag of the exercise. */
export function CellPanel({ entry, exercise, catalogue, readOnly }: CellPanelProps) {
  const OneFlag = readOnly ? FlagToRead : FlagCard;
  const cursor = cursorState(
    useShallow(({ criterion, column, namingFlagId }) => ({ criterion, column, namingFlagId })),
  );
  const [shows, setShows] = useState<'cell' | 'all'>('cell');
  const [filter, setFilter] = useState<FlagFilter>(noFilter);
  const naming = entry.flags.find((flag) => flag.id === cursor.namingFlagId);
  const { rubric } = catalogue;
  const nameOf = (criterion: string): string => criterionName(catalogue, criterion, entry.exercise);
  if (naming !== undefined && exercise !== null) {
    return <FaultPicker key={naming.id} flag={naming} exercise={exercise} criterionName={nameOf(naming.criterion)} />;
  }
  const { criterion, column } = cursor;
  const clip = column === null ? undefined : clipOf(entry, column.clipId);
  if (criterion === null || column === null || clip === undefined) return null;

  const own = remarksOfSet(entry.flags, { criterion, column }, entry.clips);
  const ofSet =
    column.rep === 'set'
      ? []
      : remarksOfSet(entry.flags, { criterion, column: { ...column, rep: 'set' } }, entry.clips);
  const flags = shows === 'all' ? entry.flags.filter((flag) => passes(flag, filter)) : [...own, ...ofSet];
  const judged = rubric.criteria.find((known) => known.id === criterion);
  return (
    <section className="cell-panel" aria-label={sayFlags('flags')}>
      <header>
        <h2>
          {shows === 'all'
            ? sayFlags('allFlags')
            : sayFlags('cell', {
                criterion: nameOf(criterion),
                column: columnWords(column, clipsOnCard(entry.clips, clip.id)),
              })}
        </h2>
        <button type="button" className="quiet-button" onClick={() => setShows(shows === 'all' ? 'cell' : 'all')}>
          {shows === 'all' ? sayFlags('thisCell') : sayFlags('allFlagsCount', { count: entry.flags.length })}
        </button>
      </header>
      {shows === 'all' && (
        <FlagFilterBar
          filter={filter}
          criteria={rubric.criteria}
          nameOf={nameOf}
          flags={entry.flags}
          onChange={setFilter}
        />
      )}
      <div className="flag-list">
        {flags.map((flag) => (
          <OneFlag
            key={flag.id}
            flag={flag}
            entry={entry}
            exercise={exercise}
            where={shows === 'all' ? whereWords(nameOf(flag.criterion), entry, flag.clip) : ''}
          />
        ))}
        {flags.length === 0 && judged !== undefined && shows === 'cell' && <Anchors criterion={judged} />}
        {flags.length === 0 && shows === 'all' && (
          <p className="soft">{sayFlags(entry.flags.length === 0 ? 'noFlags' : 'noFlagMatches')}</p>
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
              <Strokes severity={severity} named="elsewhere" /> {saySeverity(`${severity}Title`)}
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

/** A flag of a received session: read-only, with a button to go to its moment. */
function FlagToRead({ flag, entry, exercise, where }: FlagToReadProps) {
  const context = useReview();
  const clip = clipOf(entry, flag.clip);
  const fault = exercise?.faults.find((known) => known.id === flag.fault);
  const words = [saySeverity(`${flag.severity ?? 'note'}Title`), where, fault?.name ?? '', repsWords(flag.reps)];
  return (
    <article className="flag-card" data-testid="flag" data-flag={flag.id}>
      <div className="flag-head">
        <Strokes severity={flag.severity} named="elsewhere" />
        <span>{words.filter((part) => part !== '').join(', ')}</span>
        <button type="button" className="time-button" onClick={() => visitFlag(context, flag)}>
          <span className="visually-hidden">{sayFlags('goTo')} </span>
          {clip === undefined ? '' : momentWords(flag.at, clip)}
        </button>
      </div>
      {flag.note !== '' && <p>{flag.note}</p>}
      {flag.cue !== '' && (
        <p>
          <span className="soft">{sayFlags('cueIs')}</span> {flag.cue}
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
  (filter.severity === '' || filter.severity === (severity ?? 'note'));

type FlagFilterBarProps = {
  readonly filter: FlagFilter;
  readonly criteria: readonly Criterion[];
  readonly nameOf: (criterion: string) => string;
  readonly flags: readonly Flag[];
  readonly onChange: (filter: FlagFilter) => void;
};

/** Keeps the list of flags to one criterion or one severity; only what is there can be chosen. */
function FlagFilterBar({ filter, criteria, nameOf, flags, onChange }: FlagFilterBarProps) {
  const present = new Set(flags.flatMap((flag) => [flag.criterion, flag.severity ?? 'note']));
  return (
    <fieldset className="flag-filter" aria-label={sayFlags('filter')}>
      <select
        aria-label={sayFlags('criterion')}
        value={filter.criterion}
        onChange={(event) => onChange({ ...filter, criterion: event.target.value })}
      >
        <option value="">{sayFlags('everyCriterion')}</option>
        {criteria
          .filter(({ id }) => present.has(id))
          .map(({ id }) => (
            <option key={id} value={id}>
              {nameOf(id)}
            </option>
          ))}
      </select>
      <select
        aria-label={sayFlags('severity')}
        value={filter.severity}
        onChange={(event) => onChange({ ...filter, severity: event.target.value })}
      >
        <option value="">{sayFlags('everySeverity')}</option>
        {([...severities, 'note'] as const)
          .filter((severity) => present.has(severity))
          .map((severity) => (
            <option key={severity} value={severity}>
              {saySeverity(`${severity}Title`)}
            </option>
          ))}
      </select>
    </fieldset>
  );
}
