import { type Block, plainText, strong, text } from '../document/document.ts';
import { sentence, upperFirst } from '../document/words.ts';
import type { LetterMessageId } from '../wording/english/letter.ts';
import { type FindingWording, sayFindings } from '../wording/sayGrade.ts';
import { type LetterStyle, paragraphIds } from './letter.ts';
import type { Change, FilmRequest, LetterPlan } from './letterPlan.ts';
import type { Speaker } from './speaker.ts';

const mostChanges = 6;

const changeIds = {
  gone: 'sinceGone',
  better: 'sinceBetter',
  same: 'sinceSame',
  back: 'sinceBack',
  worse: 'sinceWorse',
} as const satisfies Record<Change['kind'], LetterMessageId>;

function sayChange({ kind, fault, exercise, before, now }: Change, { oneLift }: LetterPlan, speaker: Speaker): string {
  const reps = (load: Change['now']): string =>
    load === null
      ? ''
      : speaker.say(load.of < load.inAll ? 'sinceRepsLooked' : 'sinceReps', {
          reps: speaker.whole(load.reps),
          of: speaker.say('repCount', { count: load.of }),
        });
  const name = oneLift ? fault : speaker.say('sinceName', { fault, exercise });
  const line = speaker.say(changeIds[kind], { name, before: reps(before), now: reps(now) });
  if (before === null || now === null || before.severity === now.severity) return line;
  const weighed = (severity: typeof now.severity) => speaker.say('severity', { severity });
  return `${line} ${speaker.say('sinceSeverity', { before: weighed(before.severity), now: weighed(now.severity) })}`;
}

/** What became of last time's faults, as a short list. */
export function writeChanges(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.changes.length === 0) return [];
  const items = plan.changes.slice(0, mostChanges).map((change) => [text(sayChange(change, plan, speaker))]);
  return [
    { kind: 'heading', level: 2, id: 'since', text: speaker.say('sinceTitle') },
    { kind: 'list', id: 'since-list', ordered: false, items },
  ];
}

/** The parts of a finding that the letter says, in order. Where a finding comes from is for the coach alone. */
const partsOf = ({ why, suggestion }: FindingWording, length: LetterStyle['length']): string[] =>
  length === 'short' ? [suggestion] : [why, suggestion];

/** What the plan could do better, each with its reason; in a short letter a line each. No sentence is said twice. */
export function writeProgramme(plan: LetterPlan, speaker: Speaker, length: LetterStyle['length']): Block[] {
  const { findings, pain } = plan;
  const waits = pain?.findingsOn ?? [];
  if (findings.length === 0 && waits.length === 0) return [];
  const ids = paragraphIds(
    'programme',
    findings.map(({ kind, entryIds }) => ({ key: [kind, ...entryIds].join('-') })),
  );
  const said = sayFindings(findings, speaker.language).map((wording, index): Block[] => {
    const rest = partsOf(wording, length)
      .filter((words) => words !== '')
      .map(sentence);
    const id = ids[index] ?? '';
    const paragraph: Block = {
      kind: 'paragraph',
      id,
      inlines: [strong(sentence(wording.what)), ...(rest.length === 0 ? [] : [text(` ${rest.join(' ')}`)])],
    };
    const items = wording.steps.map((step) => [text(step)]);
    return items.length === 0
      ? [paragraph]
      : [paragraph, { kind: 'list', id: `${id}-steps`, ordered: items.length > 1, items }];
  });
  const seen = new Set<string>();
  const once = said.filter(([block]) => {
    const line = block?.kind === 'paragraph' ? plainText(block.inlines) : '';
    return !seen.has(line) && seen.add(line);
  });
  const later = speaker.say('programmeWaits', { lifts: speaker.lifts(waits), step: pain?.step ?? 'none' });
  const waiting: Block[] =
    waits.length === 0 ? [] : [{ kind: 'paragraph', id: 'programme-waits', inlines: [text(later)] }];
  return [
    { kind: 'heading', level: 2, id: 'programme', text: speaker.say('programmeTitle') },
    ...once.flat(),
    ...waiting,
  ];
}

function sayAsk(request: FilmRequest, { filmEffort: effort, oneLift }: LetterPlan, speaker: Speaker): string {
  switch (request.kind) {
    case 'none':
      return speaker.say('filmNone', { view: speaker.say('view', { view: request.view }), effort });
    case 'otherView': {
      const criteria = speaker.list(request.criteria.map(speaker.within));
      return request.view === null
        ? speaker.say('filmNoView', { criteria })
        : speaker.say('filmOtherView', { criteria, view: speaker.say('view', { view: request.view }) });
    }
    case 'unseen':
      return speaker.say('filmUnseen', {
        criteria: speaker.list(request.criteria.map(speaker.within)),
      });
    case 'notLookedAt':
      return speaker.say('filmNotLookedAt');
    case 'onlyNotes':
      return speaker.say('filmOnlyNotes');
    case 'lighter':
      return speaker.say('filmLighter', { view: speaker.say('view', { view: request.view }) });
    case 'afterStop':
      return speaker.say('filmAfterStop', { view: speaker.say('view', { view: request.view }) });
    case 'first':
      return speaker.say('filmFirst', { effort });
    case 'afterPain':
      return sayAfterPain(request, speaker);
    case 'withoutPain':
      return speaker.say('filmWithoutPain');
    case 'again':
      return request.exercises.length === 0
        ? speaker.say('filmAgain', { effort, lifts: oneLift ? 'one' : 'several' })
        : speaker.say('filmAgainOf', { effort, lifts: speaker.lifts(request.exercises) });
  }
}

function sayAfterPain({ step, exercises }: Extract<FilmRequest, { kind: 'afterPain' }>, speaker: Speaker): string {
  if (exercises.length === 0) return speaker.say(step === 'stop' ? 'filmNothingYet' : 'filmOnceSettled');
  return speaker.say(step === 'stop' ? 'filmAfterClinician' : 'filmAfterPain', { lifts: speaker.lifts(exercises) });
}

/** A request with its exercise before it, where there are several. */
function sayFilm(request: FilmRequest, plan: LetterPlan, speaker: Speaker): string {
  const ask = sayAsk(request, plan, speaker);
  return 'exercise' in request && !plan.oneLift ? `${request.exercise}: ${ask}` : upperFirst(ask);
}

/** Requests that hold back are cautions. */
const holdsBack: ReadonlySet<FilmRequest['kind']> = new Set([
  'afterPain',
  'withoutPain',
  'afterStop',
  'lighter',
] as const);

/** What to film next: a sentence or two for each request. What holds back can't be put in other words. */
export function writeFilm(plan: LetterPlan, speaker: Speaker): Block[] {
  const said = plan.film.map((request) => ({
    key: request.key,
    line: sayFilm(request, plan, speaker),
    fixed: holdsBack.has(request.kind) ? ({ fixed: true } as const) : {},
  }));
  const lines = said.filter(({ line }, at) => said.findIndex((each) => each.line === line) === at);
  if (lines.length === 0) return [];
  const ids = paragraphIds('film', lines);
  return [
    { kind: 'heading', level: 2, id: 'film', text: speaker.say('filmTitle') },
    ...lines.map(
      ({ line, fixed }, index): Block => ({ kind: 'paragraph', id: ids[index] ?? '', inlines: [text(line)], ...fixed }),
    ),
  ];
}
