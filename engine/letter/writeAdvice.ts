import { type Block, strong, text } from '../document/document.ts';
import { sentence } from '../document/words.ts';
import { sayFinding } from '../wording/sayGrade.ts';
import { paragraphIds } from './letter.ts';
import type { Change, FilmRequest, LetterPlan } from './letterPlan.ts';
import type { Speaker } from './speaker.ts';

const mostChanges = 5;

function sayChange({ kind, fault, exercise, before, now }: Change, speaker: Speaker): string {
  const reps = (load: Change['now']): string =>
    load === null
      ? ''
      : speaker.say('sinceReps', { reps: speaker.whole(load.reps), of: speaker.say('repCount', { count: load.of }) });
  const values = { fault, exercise, before: reps(before), now: reps(now) };
  switch (kind) {
    case 'gone':
      return speaker.say('sinceGone', values);
    case 'back':
      return speaker.say('sinceBack', values);
    case 'better':
      return speaker.say('sinceBetter', values);
    case 'worse':
      return speaker.say('sinceWorse', values);
  }
}

/** What became of last time's faults, as a short list. */
export function writeChanges(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.changes.length === 0) return [];
  const items = plan.changes.slice(0, mostChanges).map((change) => [text(sayChange(change, speaker))]);
  return [
    { kind: 'heading', level: 2, id: 'since', text: speaker.say('sinceTitle') },
    { kind: 'list', id: 'since-list', ordered: false, items },
  ];
}

/** What the plan could do better, each with its reason and its source. */
export function writeProgramme(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.findings.length === 0) return [];
  const ids = paragraphIds(
    'programme',
    plan.findings.map(({ kind, entryIds }) => ({ key: [kind, ...entryIds].join('-') })),
  );
  return [
    { kind: 'heading', level: 2, id: 'programme', text: speaker.say('programmeTitle') },
    ...plan.findings.map((finding, index): Block => {
      const { what, why, suggestion, source } = sayFinding(finding, speaker.language);
      const because = speaker.say('why', { why: sentence(why).replace(/\.$/, ''), source });
      return {
        kind: 'paragraph',
        id: ids[index] ?? '',
        inlines: [strong(sentence(what)), text(` ${because} ${sentence(suggestion)}`)],
      };
    }),
  ];
}

function sayFilm(request: FilmRequest, speaker: Speaker): string {
  switch (request.kind) {
    case 'none':
      return speaker.say('filmNone', { exercise: request.exercise, view: speaker.say('view', { view: request.view }) });
    case 'otherView': {
      const criteria = speaker.list(request.criteria.map(speaker.within));
      return request.view === null
        ? speaker.say('filmNoView', { exercise: request.exercise, criteria })
        : speaker.say('filmOtherView', {
            exercise: request.exercise,
            criteria,
            view: speaker.say('view', { view: request.view }),
          });
    }
    case 'unseen':
      return speaker.say('filmUnseen', {
        exercise: request.exercise,
        criteria: speaker.list(request.criteria.map(speaker.within)),
        view: speaker.say('view', { view: request.view }),
      });
    case 'afterStop':
      return speaker.say('filmAfterStop', {
        exercise: request.exercise,
        view: speaker.say('view', { view: request.view }),
      });
    case 'first':
      return speaker.say('filmFirst');
    case 'afterPain':
      return speaker.say('filmAfterPain');
    case 'again':
      return speaker.say('filmAgain');
  }
}

/** What to film next: a sentence or two for each request. */
export function writeFilm(plan: LetterPlan, speaker: Speaker): Block[] {
  const said = plan.film.map((request) => ({ key: request.key, line: sayFilm(request, speaker) }));
  const lines = said.filter(({ line }, at) => said.findIndex((each) => each.line === line) === at);
  const ids = paragraphIds('film', lines);
  return [
    { kind: 'heading', level: 2, id: 'film', text: speaker.say('filmTitle') },
    ...lines.map(({ line }, index): Block => ({ kind: 'paragraph', id: ids[index] ?? '', inlines: [text(line)] })),
  ];
}
