import { workOfEntries } from '../../../engine/document/sayWork.ts';
import type { Edition } from '../../../engine/edition/edition.ts';
import { type Catalogue, findExercise } from '../../../engine/exercises/catalogue.ts';
import type {
  CriterionScore,
  EntryGrade,
  GradeState,
  Overridden,
  Raise,
  SessionGrade,
} from '../../../engine/grading/grade.ts';
import { toldRange } from '../../../engine/grading/toldRange.ts';
import { shownGain, shownWholeScore } from '../../../engine/rubric/shownNumbers.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import { sayFinding, sayMissingGrade } from '../../../engine/wording/sayGrade.ts';
import { oneLine } from '../run/outcome.ts';
import { percent, score, shortNumber } from './numbers.ts';
import { numberColumns, textColumns, textPairs, textTable } from './table.ts';

/** A session's grade, for people: the session, its exercises, their criteria, and what would raise it. */
export function gradeReport(edition: Edition): string {
  const { review, catalogue } = edition;
  const grade = edition.grade();
  const names = namesIn(catalogue);
  const { trainee, session } = review;
  const title = [session.title, trainee.name, session.date].filter((part) => part !== '').join(' · ');
  const parts = [
    `${oneLine(title)}\n`,
    sessionLines(grade),
    overview(grade, names, workOfEntries(review, catalogue, 'en')),
    ...grade.entries.map((entry) => criteria(entry, names)),
    raises(grade, names),
    findings(grade),
  ];
  return parts.filter((part) => part !== '').join('\n');
}

type Names = ReturnType<typeof namesIn>;

function namesIn(catalogue: Catalogue) {
  return {
    exercise: (id: string) => findExercise(catalogue, id)?.name ?? id,
    criterion: (id: string, exercise: string) => criterionName(catalogue, id, exercise),
    fault: (exercise: string, id: string | null) =>
      findExercise(catalogue, exercise)?.faults.find((fault) => fault.id === id)?.name ?? id ?? 'no named fault',
  };
}

function sessionLines(grade: SessionGrade): string {
  const stop = grade.cappedByStop ? ' (capped by a stop flag)' : '';
  const byHand: [string, string][] =
    grade.override === null ? [] : [['Set by hand', `${grade.override.reason} (${computedOf(grade.override)})`]];
  return textPairs([
    ['Session', `${markOf(grade.state)}  ${scoreOf(grade.state)}${stop}${reasonOf(grade.state)}`],
    ...byHand,
    ['Lies between', rangeOf(grade)],
    ['Technique', grade.technique === null ? '-' : score(grade.technique)],
    ['Programme', programmeOf(grade)],
    ['Rubric', `${grade.rubric.id}, version ${grade.rubric.version}`],
  ]);
}

function programmeOf({ programme, programmeCost }: SessionGrade): string {
  if (programme === null) return 'no plan given';
  if (programmeCost === null) return score(programme);
  return programmeCost === 0 ? 'costs nothing' : `costs ${shortNumber(programmeCost, 1)} of 100 points`;
}

function overview(grade: SessionGrade, names: Names, work: (entryId: string) => string): string {
  if (grade.entries.length === 0) return '';
  return textTable(
    [
      ...textColumns('Exercise', 'Grade'),
      ...numberColumns('Score', 'Lies between', 'Looked at'),
      ...textColumns('Sets'),
    ],
    grade.entries.map((entry) => [
      names.exercise(entry.exercise),
      markOf(entry.state),
      scoreOf(entry.state),
      rangeOf(entry),
      percent(entry.coverage),
      work(entry.entryId),
    ]),
  );
}

function criteria(entry: EntryGrade, names: Names): string {
  const table = textTable(
    [...textColumns('Criterion'), ...numberColumns('Share', 'Score'), ...textColumns('Each rep')],
    entry.criteria.map((criterion) => [
      names.criterion(criterion.criterion, entry.exercise),
      percent(criterion.share),
      criterion.score === null ? '-' : score(criterion.score),
      repsOf(criterion),
    ]),
  );
  const capped = entry.cappedByStop ? ' (capped by a stop flag)' : '';
  const byHand =
    entry.override === null ? '' : `  set by hand: ${entry.override.reason} (${computedOf(entry.override)})`;
  return `${names.exercise(entry.exercise)}: ${markOf(entry.state)} ${scoreOf(entry.state)}${capped}${byHand}${reasonOf(entry.state)}\n${table}`;
}

function repsOf(criterion: CriterionScore): string {
  if (!criterion.lookedAt) return criterion.applicable ? 'not looked at' : 'not visible from here';
  const scores = criterion.reps.map((rep) => `${shownWholeScore(rep.score)}`).join(' ');
  const { lookedAt, applicable } = criterion.cells;
  return lookedAt === applicable ? scores : `${scores} (${lookedAt} of ${applicable} looked at)`;
}

function raises(grade: SessionGrade, names: Names): string {
  // What would be printed as +0.00 is left out.
  const telling = grade.raises.filter(({ gain }) => shownGain(gain, 2) > 0);
  if (telling.length === 0) return '';
  const exerciseOf = (id: string) => grade.entries.find(({ entryId }) => entryId === id)?.exercise ?? '';
  const rows = telling.map((raise) => {
    const exercises = [...new Set(raise.entryIds.map((id) => names.exercise(exerciseOf(id))))];
    return [
      `+${shownGain(raise.gain, 2).toFixed(2)}`,
      exercises.join(', '),
      raise.kind === 'group' ? names.criterion(raise.criterion, exerciseOf(raise.entryId)) : '',
      goneIn(raise, grade, names),
      raise.severity,
      raise.kind === 'finding' ? '' : String(raise.reps),
    ];
  });
  return `What would raise it\n${textTable([...numberColumns('Points'), ...textColumns('Exercise', 'Criterion', 'If this were gone', 'Severity'), ...numberColumns('Reps')], rows)}`;
}

/** What a raise says would be gone. */
function goneIn(raise: Raise, { entries, findings: found }: SessionGrade, names: Names): string {
  switch (raise.kind) {
    case 'group':
      return names.fault(entries.find(({ entryId }) => entryId === raise.entryId)?.exercise ?? '', raise.fault);
    case 'stops':
      return raise.groups === 2 ? 'both stops together' : `all ${raise.groups} stops together`;
    case 'finding': {
      const finding = found.find(({ id }) => id === raise.findingId);
      return `programme: ${finding === undefined ? raise.findingId : sayFinding(finding, 'en').what}`;
    }
  }
}

function findings(grade: SessionGrade): string {
  if (grade.findings.length === 0) return '';
  const lines = grade.findings.map((finding) => {
    const { what, suggestion } = sayFinding(finding, 'en');
    return `  ${finding.severity}: ${what} ${suggestion}\n`;
  });
  return `Programme\n${lines.join('')}`;
}

/** What the flags alone say where a grade was set by hand. */
const computedOf = ({ computed }: Overridden): string =>
  computed.kind === 'none'
    ? 'no grade by the flags alone'
    : `${markOf(computed)} ${scoreOf(computed)} by the flags alone`;

function markOf(state: GradeState): string {
  switch (state.kind) {
    case 'graded':
      return state.mark;
    case 'provisional':
      return `${state.mark} (provisional)`;
    case 'none':
      return 'no grade';
  }
}

function scoreOf(state: GradeState): string {
  return state.kind === 'none' ? '-' : score(state.score);
}

function reasonOf(state: GradeState): string {
  return state.kind === 'none' ? `  ${sayMissingGrade(state.reason, 'en')}` : '';
}

function rangeOf(grade: EntryGrade | SessionGrade): string {
  const range = toldRange(grade);
  return range === null ? '-' : `${score(range.low)} and ${score(range.high)}`;
}
