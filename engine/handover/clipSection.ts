import { directionHtml, escapeHtml, folderAddress, wordsHtml } from '../document/lineHtml.ts';
import { sentence, tidy, upperFirst } from '../document/words.ts';
import { isJudging } from '../review/parts.ts';
import type { FlagRow } from '../sheet/flagRows.ts';
import { type SheetLanguage, sayReps } from '../sheet/sheetLanguage.ts';
import type { StartPageMessageId } from '../wording/english/startPage.ts';
import type { Say } from '../wording/wordings.ts';
import { fileLink, foldedLinks } from './filesOfSession.ts';
import type { ClipInFolder, FileInFolder } from './handoverFolder.ts';
import { nearSideJoints } from './nearSide.ts';
import { type ClipData, clockAtUs } from './pageData.ts';

/** What every part of the page is written with. */
export type Writing = { readonly say: Say<StartPageMessageId>; readonly sheet: SheetLanguage };

/** One remark in the list, with the moment it has in the clip in the folder; null = none. */
export type ListedNote = { readonly row: FlagRow; readonly atUs: number | null };

export type SectionOf = {
  readonly id: string;
  readonly entryId: string;
  readonly title: string;
  readonly name: string;
  readonly clip: { readonly data: ClipData; readonly inFolder: ClipInFolder } | null;
  readonly notes: readonly ListedNote[];
  readonly files: readonly FileInFolder[];
};

const rates = [1, 0.5, 0.25, 0.1] as const;

function noteItem({ row, atUs }: ListedNote, jumps: boolean, { say, sheet }: Writing): string {
  const head = [sayReps(row, sheet), row.criterionName].map((part) => wordsHtml(tidy(part))).join('\u00A0· ');
  const severity = `<span class="strokes">${escapeHtml(sheet.severityLine(row.severity))}</span>`;
  const time = atUs === null ? sheet.say('noTime') : sheet.format.clock(atUs);
  const line = `<time>${escapeHtml(time)}</time> ${head}\u00A0· ${severity}`;
  const said = [upperFirst(sentence(row.seen)), sentence(row.note)].filter((part) => part !== '').join(' ');
  const cue = row.cue === '' ? '' : sheet.say('cueLine', { cue: sentence(row.cue) });
  return [
    row.severity === 'stop' ? '<li class="stop">' : '<li>',
    jumps && atUs !== null
      ? `<button type="button" class="note" title="${escapeHtml(say('jump'))}">${line}</button>`
      : `<p>${line}</p>`,
    ...(said === '' ? [] : [`<p${directionHtml(said)}>${wordsHtml(said)}</p>`]),
    ...(cue === '' ? [] : [`<p class="cue"${directionHtml(cue)}>${wordsHtml(cue)}</p>`]),
    '</li>',
  ].join('\n');
}

/** What is drawn over the picture; the script sets the places. Lines are as thick as in a picture of 720 lines. */
function overlay({ data, inFolder }: NonNullable<SectionOf['clip']>): string {
  const { width, height } = inFolder.shown;
  const unit = Math.max(1, Math.min(width, height) / 480);
  const px = (points: number): string => String(Math.round(points * unit * 10) / 10);
  const loadPath = [
    '<g class="load-path">',
    `<path class="whole casing" stroke-width="${px(5)}"></path>`,
    `<path class="whole" stroke-width="${px(2.5)}"></path>`,
    `<path class="done" stroke-width="${px(3)}"></path>`,
    `<circle class="now" r="${px(5)}" stroke-width="${px(2)}" visibility="hidden"></circle>`,
    '</g>',
  ];
  const label = `<text font-size="${px(17)}" stroke-width="${px(4)}" data-beside="${px(12)}"></text>`;
  const body = [
    '<g class="body">',
    `<path class="casing" stroke-width="${px(4)}"></path>`,
    `<path stroke-width="${px(2)}"></path>`,
    ...nearSideJoints.map(() => `<circle r="${px(3.5)}" stroke-width="${px(1.5)}"></circle>`),
    label,
    label,
    '</g>',
  ];
  return [
    `<svg class="overlay" viewBox="0 0 ${width} ${height}" aria-hidden="true">`,
    ...(data.loadPath === null ? [] : loadPath),
    ...(data.body === null ? [] : body),
    '</svg>',
  ].join('\n');
}

/** A button that steps through frames or notes; `key` does the same on a keyboard. */
function stepButton(step: string, label: string, key = ''): string {
  const named = key === '' ? '' : ` <span class="key">(${key})</span>`;
  return `<button type="button" data-step="${step}">${escapeHtml(label)}${named}</button>`;
}

/** Under the picture, never over it: where the clip is, and from note to note. */
function controls({ data }: NonNullable<SectionOf['clip']>, { say }: Writing): string {
  const isNoted = data.notes.length > 0;
  return [
    '<div class="controls">',
    `<input type="range" class="position" min="0" step="any" value="0" aria-label="${escapeHtml(say('position'))}">`,
    ...(isNoted ? [stepButton('note -1', say('back'), 'B')] : []),
    `<button type="button" class="play">${escapeHtml(say('play'))}</button>`,
    ...(isNoted ? [stepButton('note 1', say('on'), 'N')] : []),
    '</div>',
  ].join('\n');
}

function tools({ data }: NonNullable<SectionOf['clip']>, { say, sheet }: Writing): string {
  const layer = (name: string, label: string, begins: 'shown' | 'hidden') =>
    `<label><input type="checkbox" data-layer="${name}"${begins === 'shown' ? ' checked' : ''}> ${escapeHtml(label)}</label>`;
  // The notes stand beside the picture already, and often in it; over it they would hide the lift.
  const layers = [
    ...(data.loadPath === null ? [] : [layer('load-path', say('loadPath'), 'shown')]),
    ...(data.body === null ? [] : [layer('body', say('body'), 'shown')]),
    ...(data.cues.length === 0 ? [] : [layer('cues', say('cues'), 'hidden')]),
  ];
  const options = rates.map(
    (rate) => `<option value="${rate}">${escapeHtml(say('rate', { rate: sheet.format.exactPoints(rate) }))}</option>`,
  );
  const reps = data.reps.map(
    ({ fromS, text }, at) =>
      `<li><button type="button" class="rep" data-rep="${at}">${escapeHtml(text)} <time>${escapeHtml(sheet.format.clock(clockAtUs(data, Math.round(fromS * 1e6))))}</time></button></li>`,
  );
  return [
    '<div class="tools">',
    stepButton('frame -1', say('frameBack')),
    stepButton('frame 1', say('frameOn')),
    `<button type="button" class="full">${escapeHtml(say('fullScreen'))}</button>`,
    `<label>${escapeHtml(say('speed'))} <select class="rate">${options.join('')}</select></label>`,
    ...(layers.length === 0
      ? []
      : ['<fieldset>', `<legend>${escapeHtml(say('shown'))}</legend>`, ...layers, '</fieldset>']),
    ...(reps.length === 0
      ? []
      : ['<div class="reps">', `<h3>${escapeHtml(say('reps'))}</h3>`, '<ol>', ...reps, '</ol>', '</div>']),
    '</div>',
  ].join('\n');
}

function stage(section: SectionOf, clip: NonNullable<SectionOf['clip']>, writing: Writing): string {
  const { say } = writing;
  const { file, poster, shown } = clip.inFolder;
  const look = poster === undefined ? '' : ` poster="${folderAddress(poster)}"`;
  const label = escapeHtml(say('player', { clip: section.name }));
  return [
    '<div class="stage">',
    '<div class="picture">',
    `<video controls playsinline preload="metadata" width="${shown.width}" height="${shown.height}" src="${folderAddress(file)}"${look} aria-label="${label}"></video>`,
    overlay(clip),
    '</div>',
    controls(clip, writing),
    '<p class="readout"></p>',
    ...(clip.data.clockUs === null ? [] : [`<p class="soft">${escapeHtml(say('ownTime'))}</p>`]),
    '</div>',
  ].join('\n');
}

/** What the time of a file has to do with the times that are written, where that is not the same. */
const ownTimeOf = ({ kind }: FileInFolder, say: Say<StartPageMessageId>): readonly string[] =>
  kind === 'annotatedClip' ? [`<li class="soft">${escapeHtml(say('ownTime'))}</li>`] : [];

/** What a coach said over the clip is looked for first, and so is not folded away. */
const isSpoken = ({ kind }: FileInFolder): boolean => kind === 'narratedClip';

/** One clip: the player with what lies over the picture, its tools, its notes in the order of their times. */
export function clipSection(section: SectionOf, writing: Writing): string {
  const { id, title, clip, notes, files } = section;
  const { say } = writing;
  const items = notes.map((note) => noteItem(note, clip !== null, writing));
  return [
    `<section class="clip" id="${id}" aria-labelledby="${id}-title">`,
    `<h2 id="${id}-title"${directionHtml(title)}>${wordsHtml(title)}</h2>`,
    clip === null ? '<div>' : '<div class="desk">',
    clip === null ? `<p>${escapeHtml(say('missing'))}</p>` : stage(section, clip, writing),
    '<div class="notes">',
    `<h3>${escapeHtml(say('notes'))}</h3>`,
    ...(items.length === 0 ? [`<p>${escapeHtml(say('noNotes'))}</p>`] : []),
    ...(notes.some(({ row }) => isJudging(row))
      ? [`<p class="marks soft">${escapeHtml(writing.sheet.severityKey)}</p>`]
      : []),
    '<ol>',
    ...items,
    '</ol>',
    '</div>',
    ...(clip === null ? [] : [tools(clip, writing)]),
    '</div>',
    ...files.filter(isSpoken).map((file) => `<ul class="spoken">${fileLink(file, say)}</ul>`),
    ...foldedLinks(
      say('more'),
      files.filter((file) => !isSpoken(file)).flatMap((file) => [fileLink(file, say), ...ownTimeOf(file, say)]),
    ),
    '</section>',
  ].join('\n');
}

/** A clip with its exercise: clips are often named after it already ("Back squat, set 3"). */
export const titleOf = (exercise: string, name: string): string =>
  name.toLowerCase().startsWith(exercise.toLowerCase()) ? name : `${exercise}: ${name}`;
