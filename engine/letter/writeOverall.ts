import { type Block, type Inline, strong, text } from '../document/document.ts';
import { workSayer } from '../document/sayWork.ts';
import { sentence, tidy, upperFirst } from '../document/words.ts';
import type { Overridden } from '../grading/grade.ts';
import { shownGain } from '../rubric/shownNumbers.ts';
import type { LetterMessageId } from '../wording/english/letter.ts';
import { sayMissingGrade } from '../wording/sayGrade.ts';
import { paragraphIds } from './letter.ts';
import type { EntryLine, LetterPlan } from './letterPlan.ts';
import type { Speaker } from './speaker.ts';

/** Points as they are printed: the plural must fit what the reader sees. */
const printed = (points: number): number => shownGain(points, 1);

function sayPartlyJudged(plan: LetterPlan, speaker: Speaker): string {
  const partly = plan.entries.filter((entry) => entry.state.kind !== 'graded');
  const entries = speaker.list(
    [...Map.groupBy(partly, ({ exercise }) => exercise)].map(([exercise, own]) =>
      speaker.say('provisionalEntry', {
        exercise: speaker.within(exercise),
        percent: speaker.percent(Math.min(...own.map(({ coverage }) => coverage))),
      }),
    ),
  );
  const { range } = plan.overall;
  return range === null
    ? speaker.say('rangeSingle', { entries })
    : speaker.say('provisionalBecause', {
        entries,
        low: speaker.score(range.low),
        high: speaker.score(range.high),
      });
}

/** The reason of a grade set by hand, and what the remarks alone would give. */
function sayByHand(
  { reason, computed }: Overridden,
  speaker: Speaker,
  texts: { readonly graded: LetterMessageId; readonly none: LetterMessageId; readonly exercise: string },
): string {
  const values = { exercise: texts.exercise, reason: upperFirst(sentence(reason)) };
  if (computed.kind === 'none') return speaker.say(texts.none, values);
  const mark = { mark: computed.mark, score: speaker.score(computed.score) };
  return speaker.say(texts.graded, { ...values, computed: speaker.say('gradeCell', mark) });
}

/** Fault and exercise of the largest gain; the exercise only where there are others. */
function sayLargest({ overall, oneLift }: LetterPlan, speaker: Speaker): string {
  const { largest } = overall;
  if (largest === null || printed(largest.gain) <= 0) return '';
  const gain = { count: printed(largest.gain), points: speaker.points(largest.gain) };
  if (largest.kind === 'finding') return speaker.say('largestFinding', gain);
  const exercise = speaker.list(largest.exercises.map(speaker.within));
  return speaker.say('largestGain', {
    ...gain,
    fault: largest.fault,
    places: oneLift || largest.exercises.length > 1 ? 0 : 1,
    exercise,
  });
}

function sayReason(plan: LetterPlan, speaker: Speaker): string {
  const { override, programme, remarked } = plan.overall;
  if (override !== null) {
    return sayByHand(override, speaker, { graded: 'byHand', none: 'byHandNone', exercise: '' });
  }
  if (plan.stops.length > 0) return speaker.say('stopDecides');
  const urgent = plan.priorities.filter((priority) => priority.urgent);
  if (urgent.length > 0) {
    return speaker.say('urgentDecides', { lifts: speaker.lifts(urgent.flatMap(({ exercises }) => exercises)) });
  }
  const largest = sayLargest(plan, speaker);
  if (largest !== '' || remarked !== 'nothing') return largest;
  if (programme !== null && programme < 100) return speaker.say('onlyProgrammeCosts');
  return speaker.say(isSpotless(plan) ? 'nothingCostsAtAll' : 'nothingCosts');
}

/** Nothing was remarked on, and the programme costs nothing either. */
const isSpotless = ({ overall }: Pick<LetterPlan, 'overall'>): boolean =>
  overall.override === null &&
  overall.remarked === 'nothing' &&
  overall.largest === null &&
  overall.programmeCost === 0;

/** What the grade is made of where a plan is known; else ''. */
function sayParts({ overall, stops, priorities }: LetterPlan, speaker: Speaker): string {
  const { state, technique, programme, programmeCost } = overall;
  if (technique === null || programme === null) return '';
  const stands = speaker.score(technique);
  // Where the programme costs nothing, technique is the grade that has just been said.
  if (programmeCost === 0 && state.kind !== 'none' && stands === speaker.score(state.score)) {
    const goesWithoutSaying = isSpotless({ overall }) || stops.length > 0 || priorities.some(({ urgent }) => urgent);
    return goesWithoutSaying ? '' : speaker.say('programmeCostsNothing');
  }
  if (programmeCost !== null) return speaker.say('partsByCost', { technique: stands, cost: programmeCost });
  return speaker.say('parts', { technique: stands, programme: speaker.score(programme) });
}

function gradeLine(plan: LetterPlan, speaker: Speaker): Inline[] {
  const { state } = plan.overall;
  if (state.kind === 'none')
    return [strong(speaker.say('noGrade')), text(` ${sayMissingGrade(state.reason, speaker.language)}`)];
  const mark = { mark: state.mark, score: speaker.score(state.score) };
  const first = speaker.say(state.kind === 'graded' ? 'graded' : 'provisional', mark);
  const reason = sayReason(plan, speaker);
  const rest = [sayParts(plan, speaker), reason].filter((each) => each !== '');
  return [strong(first), ...(rest.length === 0 ? [] : [text(` ${rest.join(' ')}`)])];
}

/** The overall grade with its reason; a provisional one, or none at all, said plainly. */
export function writeOverall(plan: LetterPlan, speaker: Speaker): Block[] {
  const blocks: Block[] = [{ kind: 'paragraph', id: 'overall', inlines: gradeLine(plan, speaker) }];
  if (plan.overall.state.kind === 'provisional') {
    blocks.push({ kind: 'paragraph', id: 'overall-provisional', inlines: [text(sayPartlyJudged(plan, speaker))] });
  }
  return blocks;
}

function sayGrade(entry: EntryLine, speaker: Speaker): string {
  if (entry.state.kind === 'none') return speaker.say('gradeCellNone');
  return speaker.say(entry.state.kind === 'graded' ? 'gradeCell' : 'gradeCellProvisional', {
    mark: entry.state.mark,
    score: speaker.score(entry.state.score),
  });
}

function entryNote(entry: EntryLine, speaker: Speaker): string {
  if (entry.state.kind === 'none') {
    const { exercise } = entry;
    if (entry.state.reason.id === 'nothingLookedAt') return speaker.say('entryNotJudged', { exercise });
    return speaker.say('entryNone', {
      exercise: entry.exercise,
      reason: speaker.within(sayMissingGrade(entry.state.reason, speaker.language)),
    });
  }
  if (entry.override !== null) {
    const texts = { graded: 'entryByHand', none: 'entryByHandNone', exercise: entry.exercise } as const;
    return sayByHand(entry.override, speaker, texts);
  }
  return entry.cappedByStop ? speaker.say('entryCapped', { exercise: entry.exercise }) : '';
}

/** A row for each exercise: sets × reps × load, grade and clips; then why a grade is missing or held down. */
export function writeEntries(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.entries.length === 0) return [];
  const { work } = workSayer(speaker.language, plan.units);
  const rows = plan.entries.map((entry) => [
    [text(entry.exercise)],
    [text(work(entry.work))],
    [text(sayGrade(entry, speaker))],
    [
      text(
        entry.clipNames.length === 0
          ? speaker.say('noFilm')
          : speaker.list(entry.clipNames.map((name) => speaker.say('quoted', { words: tidy(name) }))),
      ),
    ],
  ]);
  const said = plan.entries.map((entry) => ({ key: entry.entryId, note: entryNote(entry, speaker) }));
  const notes = said.filter(({ note }, at) => note !== '' && said.findIndex((each) => each.note === note) === at);
  const ids = paragraphIds('exercises-note', notes);
  return [
    { kind: 'heading', level: 2, id: 'exercises', text: speaker.say('exercisesTitle') },
    {
      kind: 'table',
      id: 'exercises-table',
      caption: speaker.say('exercisesCaption'),
      columns: [
        { label: speaker.say('columnExercise'), align: 'start' },
        { label: speaker.say('columnWork'), align: 'start' },
        { label: speaker.say('columnGrade'), align: 'start' },
        { label: speaker.say('columnFilm'), align: 'start' },
      ],
      rows,
    },
    ...notes.map(({ note }, index): Block => ({ kind: 'paragraph', id: ids[index] ?? '', inlines: [text(note)] })),
  ];
}
