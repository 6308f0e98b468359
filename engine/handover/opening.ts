import { escapeHtml, wordsHtml } from '../document/lineHtml.ts';
import { sentence, tidy } from '../document/words.ts';
import type { GradeState } from '../grading/grade.ts';
import type { LetterPlan } from '../letter/letterPlan.ts';
import type { SectionOf, Writing } from './clipSection.ts';
import { foldedLinks } from './filesOfSession.ts';

/** The session's mark with its score. */
function gradeLine(state: GradeState, { say, sheet }: Writing): string {
  if (state.kind === 'none') return `<p class="mark">${escapeHtml(say('noGrade'))}</p>`;
  const score = { score: sheet.format.score(state.score) };
  const told = say(state.kind === 'provisional' ? 'scoreForNow' : 'score', score);
  return `<p class="mark"><strong>${escapeHtml(state.mark)}</strong> <span>${escapeHtml(told)}</span></p>`;
}

/** More clips than this are folded away, so that the first one stays in sight. */
const mostLinks = 4;

/** Links to the clips with the marks of their exercises; one clip needs none. */
function clipLinks(sections: readonly SectionOf[], plan: LetterPlan, { say }: Writing): string[] {
  if (sections.length < 2) return [];
  const links = sections.map(({ id, title, entryId, notes }) => {
    const state = plan.entries.find((entry) => entry.entryId === entryId)?.state;
    const mark = state === undefined || state.kind === 'none' ? '' : ` <strong>${escapeHtml(state.mark)}</strong>`;
    const count = `<span class="soft">${escapeHtml(say('noteCount', { count: notes.length }))}</span>`;
    return `<li><a href="#${id}">${wordsHtml(title)}</a>${mark} ${count}</li>`;
  });
  const list = links.length > mostLinks ? foldedLinks(say('clips'), links) : ['<ul>', ...links, '</ul>'];
  return [`<nav aria-label="${escapeHtml(say('clips'))}">`, ...list, '</nav>'];
}

/** What to keep: of what is praised the first thing that is not at the same time the first to change. */
function sayKeep({ keeps, priorities, oneLift }: LetterPlan, { say, sheet }: Writing): string[] {
  const keep = keeps.find(({ criterion }) => criterion !== priorities[0]?.criterionName);
  if (keep === undefined) return [];
  const exercises = [...new Set(keep.sightings.map(({ exercise }) => exercise))];
  const criterion = tidy(keep.criterion);
  return oneLift
    ? [say('keepIt', { criterion })]
    : [say('keepItIn', { criterion, exercise: sheet.format.list(exercises) })];
}

/**
 * What is said first to the person: with something unsafe or with pain that stops a lift that the note above comes first,
 * and nothing else; else what to keep and the one cue to take along.
 */
function personalLine(plan: LetterPlan, writing: Writing): string {
  const { say } = writing;
  const { voice, trainee, stops, pain, priorities } = plan;
  const [name = ''] = tidy(trainee).split(' ');
  const hello = voice === 'self' || name === '' ? [] : [say('hello', { name })];
  if (stops.length > 0) return [...hello, say('stopFirst', { voice })].join(' ');
  const isHeld = pain !== null && (pain.step === 'stop' || pain.redFlag !== 'none');
  if (isHeld) return [...hello, say('painFirst', { voice })].join(' ');
  const [first] = priorities;
  const good = sayKeep(plan, writing);
  const next =
    first === undefined
      ? plan.overall.remarked === 'nothing' && pain === null && plan.clips > 0
        ? [say('nothingToChange')]
        : []
      : [
          first.cue === ''
            ? say('workOn', { voice, what: tidy(first.fault?.name ?? first.criterionName) })
            : say('cueForNext', { voice, cue: sentence(tidy(first.cue)) }),
        ];
  const held = pain !== null && !pain.over ? [say('painFirst', { voice })] : [];
  return [...hello, ...held, ...good, ...next].join(' ');
}

/** The first thing on the page: how it went, a line to the person, the way to each clip. */
export function openingSection(plan: LetterPlan, sections: readonly SectionOf[], writing: Writing): string[] {
  const line = personalLine(plan, writing);
  return [
    `<section class="opening" aria-label="${escapeHtml(writing.say('grade'))}">`,
    gradeLine(plan.overall.state, writing),
    ...(line === '' ? [] : [`<p class="personal">${wordsHtml(line)}</p>`]),
    ...clipLinks(sections, plan, writing),
    '</section>',
  ];
}
