import { type HeldBack, heldBack } from '../cautions/heldBack.ts';
import { type Block, emphasis, type RacksideDocument, strong, text } from '../document/document.ts';
import { sentence, tidy } from '../document/words.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { SessionGrade } from '../grading/grade.ts';
import { painStep } from '../pain/painRule.ts';
import type { LoadUnits } from '../review/load.ts';
import { isJudging } from '../review/parts.ts';
import type { Entry, Review } from '../review/review.ts';
import { sayFinding } from '../wording/sayGrade.ts';
import { exerciseName, type FlagRow, flagRows } from './flagRows.ts';
import type { SheetExtras } from './sheetExtras.ts';
import { type SheetLanguage, sheetLanguage } from './sheetLanguage.ts';
import { numberStills, writeFlags, writeStills } from './writeFlags.ts';
import { writeGradeNotes, writeGrades } from './writeGrades.ts';
import { writeMeasures } from './writeMeasures.ts';
import { writeRaises, writeTree } from './writeTree.ts';

/** What every part of a sheet is written from. */
type Source = {
  readonly rows: readonly FlagRow[];
  readonly stills: ReadonlyMap<string, number>;
  readonly grade: SessionGrade;
  readonly catalogue: Catalogue;
  readonly units: LoadUnits;
  readonly extras: SheetExtras;
  readonly sheet: SheetLanguage;
};

function entryBlocks(entry: Entry, number: number, source: Source): Block[] {
  const { rows, stills, catalogue, extras, sheet } = source;
  const { say } = sheet;
  const exercise = exerciseName(catalogue, entry.exercise);
  const own = rows.filter((row) => row.entryId === entry.id);
  const id = `entry-${number}`;
  return [
    { kind: 'heading', level: 2, id, text: say('flags', { exercise }) },
    own.length === 0
      ? { kind: 'paragraph', id: `${id}-none`, inlines: [text(say('noFlags'))] }
      : writeFlags(own, { id: `${id}-flags`, exercise, clips: entry.clips.length, stills }, sheet),
    ...(extras.length === 'short' ? [] : evidenceBlocks(entry, { id, exercise, own }, source)),
  ];
}

/** The evidence for an exercise: stills, measures and how its grade comes about. */
function evidenceBlocks(
  entry: Entry,
  { id, exercise, own }: { readonly id: string; readonly exercise: string; readonly own: readonly FlagRow[] },
  { stills, grade, catalogue, units, extras, sheet }: Source,
): Block[] {
  const graded = grade.entries.find((each) => each.entryId === entry.id);
  return [
    ...writeStills(own, stills, extras, sheet),
    ...writeMeasures(entry, { id, exercise, units }, extras, sheet),
    ...writeTree(graded, id, exercise, catalogue, sheet),
  ];
}

/** What the marks mean, ahead of the first of them. */
function severityKey(rows: readonly FlagRow[], grade: SessionGrade, { severityKey }: SheetLanguage): Block[] {
  if (rows.filter(isJudging).length + grade.findings.length === 0) return [];
  return [{ kind: 'paragraph', id: 'severity-key', inlines: [emphasis(severityKey)] }];
}

/** What was found about the plan; of a lift that pain holds back no advice, before the pain has been dealt with. */
function programmeBlocks(grade: SessionGrade, held: HeldBack, { language, say, severityLine }: SheetLanguage): Block[] {
  if (grade.findings.length === 0) return [];
  return [
    { kind: 'heading', level: 2, id: 'programme', text: say('programme') },
    {
      kind: 'list',
      id: 'programme-list',
      ordered: false,
      items: grade.findings.map((finding) => {
        const { what, suggestion } = sayFinding(held.withoutMore(finding), language);
        const advice = held.holdsFinding(finding)
          ? say('waitsForPain', { step: painStep(held.reading) })
          : sentence(suggestion);
        return [strong(severityLine(finding.severity)), text(` ${sentence(what)} ${advice}`)];
      }),
    },
  ];
}

/**
 * The sheet: grades, what would raise them, every flag by clip and time, and how each grade comes about. `grade` is
 * the grade of this review under this catalogue's rubric. It speaks the catalogue's language. With `extras`, what was
 * measured rep by rep, and the stills of flags; the short one leaves out all but grades, flags and programme.
 */
export function writeSheet(
  review: Review,
  grade: SessionGrade,
  catalogue: Catalogue,
  extras: SheetExtras = {},
): RacksideDocument {
  const sheet = sheetLanguage(catalogue.language ?? 'en');
  const { say, format } = sheet;
  const rows = flagRows(review, catalogue);
  const held = heldBack(review, catalogue);
  const source: Source = {
    units: review.trainee.units,
    rows,
    stills: extras.length === 'short' ? new Map() : numberStills(rows, extras),
    grade,
    catalogue,
    extras,
    sheet,
  };
  const date = format.date(review.session.date);
  const trainee = tidy(review.trainee.name);
  const clips = review.entries.flatMap((entry) => entry.clips.map((clip) => say('quoted', { words: tidy(clip.name) })));
  const basis = say('basis', {
    date,
    clips: clips.length === 0 ? say('noClips') : format.list(clips),
    rubric: catalogue.rubric.name,
    version: format.whole(grade.rubric.version),
  });
  return {
    title: say('title', { voice: review.voice, trainee, date }),
    language: sheet.language,
    author: review.voice === 'self' ? trainee : tidy(review.coach ?? ''),
    date: review.session.date,
    blocks: [
      { kind: 'heading', level: 2, id: 'grades', text: say('grades') },
      writeGrades(review, grade, catalogue, sheet),
      ...writeGradeNotes(grade, catalogue, sheet),
      ...severityKey(rows, grade, sheet),
      ...(extras.length === 'short' ? [] : writeRaises(grade, held, catalogue, sheet)),
      ...review.entries.flatMap((entry, index) => entryBlocks(entry, index + 1, source)),
      ...programmeBlocks(grade, held, sheet),
      { kind: 'paragraph', id: 'basis', inlines: [emphasis(basis)] },
    ],
  };
}
