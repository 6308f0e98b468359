import type { Block, Inline } from '../document/document.ts';
import { strong, text } from '../document/inlines.ts';
import { sentence, tidy } from '../document/tidy.ts';
import type { Overridden } from '../grading/grade.ts';
import type { EntryLine, LetterPlan } from './letterPlan.ts';
import { paragraphIds } from './paragraphIds.ts';
import type { Speaker } from './speaker.ts';

/** Points as printed, so that the plural goes with what the reader sees. */
const printed = (points: number): number => Math.round(points * 10) / 10;

function sayPartlyJudged(plan: LetterPlan, speaker: Speaker): string {
  const partly = plan.entries.filter((entry) => entry.state.kind !== 'graded');
  const entries = speaker.list(
    partly.map((entry) =>
      speaker.say(speaker.words.provisionalEntry, {
        exercise: entry.exercise,
        percent: speaker.percent(entry.coverage),
      }),
    ),
  );
  const { range } = plan.overall;
  return range === null
    ? speaker.say(speaker.words.rangeSingle, { entries })
    : speaker.say(speaker.words.provisionalBecause, {
        entries,
        low: speaker.score(range.low),
        high: speaker.score(range.high),
      });
}

/** The reason of a grade set by hand, and what the remarks alone would give. */
function sayByHand(
  { reason, computed }: Overridden,
  speaker: Speaker,
  texts: { readonly graded: string; readonly none: string; readonly exercise: string },
): string {
  const values = { exercise: texts.exercise, reason: sentence(reason) };
  if (computed.kind === 'none') return speaker.say(texts.none, values);
  const mark = { letter: computed.mark, score: speaker.score(computed.score) };
  return speaker.say(texts.graded, { ...values, computed: speaker.say(speaker.words.gradeCell, mark) });
}

function sayReason(plan: LetterPlan, speaker: Speaker): string {
  const { cappedByStop, largest, override, programme } = plan.overall;
  if (override !== null) {
    const { byHand, byHandNone } = speaker.words;
    return sayByHand(override, speaker, { graded: byHand, none: byHandNone, exercise: '' });
  }
  if (cappedByStop) return speaker.say(speaker.words.cappedByStop, { cap: speaker.score(plan.stopCap.session) });
  if (largest !== null && printed(largest.gain) > 0) {
    return speaker.count(speaker.words.largestGain, printed(largest.gain), {
      fault: largest.fault,
      exercise: largest.exercise,
      points: speaker.points(largest.gain),
    });
  }
  if (largest !== null) return '';
  return programme !== null && programme < 100 ? speaker.words.onlyProgrammeCosts : speaker.words.nothingCosts;
}

function gradeLine(plan: LetterPlan, speaker: Speaker): Inline[] {
  const { state, technique, programme } = plan.overall;
  if (state.kind === 'none') return [strong(speaker.words.noGrade), text(` ${sentence(state.reason)}`)];
  const mark = { letter: state.mark, score: speaker.score(state.score) };
  const first = speaker.say(state.kind === 'graded' ? speaker.words.graded : speaker.words.provisional, mark);
  const parts =
    technique === null || programme === null
      ? []
      : [
          speaker.say(speaker.words.parts, {
            technique: speaker.score(technique),
            programme: speaker.score(programme),
          }),
        ];
  const reason = sayReason(plan, speaker);
  const rest = [...parts, reason].filter((each) => each !== '');
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
  if (entry.state.kind === 'none') return speaker.words.gradeCellNone;
  const template = entry.state.kind === 'graded' ? speaker.words.gradeCell : speaker.words.gradeCellProvisional;
  return speaker.say(template, { letter: entry.state.mark, score: speaker.score(entry.state.score) });
}

function sayWork(entry: EntryLine, plan: LetterPlan, speaker: Speaker): string {
  return [
    speaker.count(speaker.words.sets, entry.sets),
    ...(entry.reps === null ? [] : [speaker.count(speaker.words.reps, entry.reps)]),
    ...(entry.loadsKg.length === 0 ? [] : [speaker.load(entry.loadsKg, plan.units)]),
  ].join(' × ');
}

function entryNote(entry: EntryLine, plan: LetterPlan, speaker: Speaker): string {
  if (entry.state.kind === 'none') {
    return speaker.say(speaker.words.entryNone, {
      exercise: entry.exercise,
      reason: speaker.within(sentence(entry.state.reason)),
    });
  }
  if (entry.override !== null) {
    const { entryByHand, entryByHandNone } = speaker.words;
    const texts = { graded: entryByHand, none: entryByHandNone, exercise: entry.exercise };
    return sayByHand(entry.override, speaker, texts);
  }
  const cap = speaker.score(plan.stopCap.exercise);
  return entry.cappedByStop ? speaker.say(speaker.words.entryCapped, { exercise: entry.exercise, cap }) : '';
}

/** One row an exercise: sets × reps × load, grade and clips; then why a grade is missing or held down. */
export function writeEntries(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.entries.length === 0) return [];
  const { words } = speaker;
  const rows = plan.entries.map((entry) => [
    [text(entry.exercise)],
    [text(sayWork(entry, plan, speaker))],
    [text(sayGrade(entry, speaker))],
    [
      text(
        entry.clipNames.length === 0
          ? words.noFilm
          : speaker.list(entry.clipNames.map((name) => speaker.say(words.quoted, { words: tidy(name) }))),
      ),
    ],
  ]);
  const said = plan.entries.map((entry) => ({ key: entry.entryId, note: entryNote(entry, plan, speaker) }));
  const notes = said.filter(({ note }, at) => note !== '' && said.findIndex((each) => each.note === note) === at);
  const ids = paragraphIds('exercises-note', notes);
  return [
    { kind: 'heading', level: 2, id: 'exercises', text: words.exercisesTitle },
    {
      kind: 'table',
      id: 'exercises-table',
      caption: words.exercisesCaption,
      columns: [
        { label: words.columnExercise, align: 'start' },
        { label: words.columnWork, align: 'start' },
        { label: words.columnGrade, align: 'start' },
        { label: words.columnFilm, align: 'start' },
      ],
      rows,
    },
    ...notes.map(({ note }, index): Block => ({ kind: 'paragraph', id: ids[index] ?? '', inlines: [text(note)] })),
  ];
}
