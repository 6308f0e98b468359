import { escapeHtml, wordsHtml } from '../document/lineHtml.ts';
import { blocksHtml } from '../document/toHtml.ts';
import { tidy } from '../document/words.ts';
import { localeOf } from '../language/language.ts';
import type { Clip, Entry } from '../review/review.ts';
import { exerciseName, flagRows } from '../sheet/flagRows.ts';
import { sheetLanguage } from '../sheet/sheetLanguage.ts';
import type { StartPageMessageId } from '../wording/english/startPage.ts';
import { type Say, sayerOf, startPageWording } from '../wording/wordings.ts';
import { clipSection, type ListedNote, type SectionOf, titleOf, type Writing } from './clipSection.ts';
import { filesOfSession, foldedLinks } from './filesOfSession.ts';
import type { FileInFolder, HandoverFolder, PageScript } from './handoverFolder.ts';
import { clipStyle, indexStyle } from './indexStyle.ts';
import { openingSection } from './opening.ts';
import { type ClipData, clipData, clockAtUs, type PageData, timedRows } from './pageData.ts';

/** Runs the page's own script and no other; pictures and clips come from the folder, nothing else is fetched. */
const policyFor = ({ sha256 }: PageScript): string =>
  [
    "default-src 'none'",
    `script-src 'sha256-${sha256}'`,
    "style-src 'unsafe-inline'",
    'font-src data:',
    "img-src 'self' file:",
    "media-src 'self' file:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');

/** JSON that can't close the element it stands in, nor open a comment there (HTML Standard, restrictions on scripts). */
const safeJson = (value: unknown): string => JSON.stringify(value).replace(/</g, '\\u003c');

function sectionOf(entry: Entry, clip: Clip, id: string, folder: HandoverFolder): SectionOf {
  const { review, catalogue, clips, files } = folder;
  const inFolder = clips.get(clip.id) ?? null;
  const rows = flagRows(review, catalogue).filter((row) => row.clip === clip.id);
  const data = inFolder === null ? null : clipData(clip, inFolder, rows, { id, review, catalogue });
  const timed = data === null ? [] : timedRows(rows, data.table);
  const untimed = rows.filter((row) => !timed.some((one) => one.row === row));
  const notes: ListedNote[] = [
    ...timed.map(({ row, moment }) => ({ row, atUs: data && clockAtUs(data, Math.round(moment.atS * 1e6)) })),
    ...untimed.map((row) => ({ row, atUs: row.us })),
  ];
  const name = tidy(clip.name);
  return {
    id,
    entryId: entry.id,
    title: titleOf(tidy(exerciseName(catalogue, entry.exercise)), name),
    name,
    clip: data === null || inFolder === null ? null : { data, inFolder },
    notes,
    files: files.filter(({ clipId }) => clipId === clip.id),
  };
}

/** The documents at the end of the page: whoever opens it comes for grade and clips. */
function documentsSection(files: readonly FileInFolder[], say: Say<StartPageMessageId>): string[] {
  if (files.length === 0) return [];
  const { documents, others } = filesOfSession(files, say);
  return [
    '<nav aria-labelledby="files">',
    `<h2 id="files">${escapeHtml(say('files'))}</h2>`,
    ...(documents.length === 0 ? [] : ['<ul class="documents">', ...documents, '</ul>']),
    ...foldedLinks(say('otherFormats'), others),
    '</nav>',
  ];
}

function pageData(clips: readonly ClipData[], { say, sheet }: Writing): PageData {
  return {
    clips,
    words: {
      locale: localeOf[sheet.language],
      play: say('play'),
      pause: say('pause'),
      angles: [say('knee'), say('trunk')],
      cues: say('cues'),
      reps: say('reps'),
    },
  };
}

/**
 * The start page of a handover's folder: one file that plays the clips, lists their notes in the order of their times,
 * jumps to each, and shows over the picture what was measured. It works from the file system and asks for nothing from
 * a network. It speaks the catalogue's language.
 */
export function writeIndexPage(folder: HandoverFolder): string {
  const { review, catalogue, files, script, faces, plan, notices } = folder;
  const sheet = sheetLanguage(catalogue.language ?? 'en');
  const say = sayerOf(startPageWording, sheet.language);
  const writing: Writing = { say, sheet };
  const title = say('title', {
    voice: review.voice,
    trainee: tidy(review.trainee.name),
    date: sheet.format.date(review.session.date),
  });
  const sections = review.entries
    .flatMap((entry) => entry.clips.map((clip) => ({ entry, clip })))
    .map(({ entry, clip }, index) => sectionOf(entry, clip, `clip-${index + 1}`, folder));
  const playable = sections.flatMap(({ clip }) => (clip === null ? [] : [clip]));
  const data = pageData(
    playable.map((clip) => clip.data),
    writing,
  );
  const known = new Set(review.entries.flatMap((entry) => entry.clips.map(({ id }) => id)));
  const ofSession = files.filter(({ clipId }) => clipId === undefined || !known.has(clipId));
  const coach = review.voice === 'self' || review.coach === undefined ? '' : tidy(review.coach);
  const keys = data.clips.some(({ notes }) => notes.length > 0);
  return [
    '<!doctype html>',
    `<html lang="${sheet.language}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta http-equiv="Content-Security-Policy" content="${policyFor(script)}">`,
    '<meta name="referrer" content="no-referrer">',
    `<title>${escapeHtml(title)}</title>`,
    `<style>\n${faces}${indexStyle}${playable.map(({ data, inFolder }) => clipStyle(data.id, inFolder.shown)).join('')}</style>`,
    '</head>',
    '<body dir="ltr">',
    '<header>',
    `<h1>${wordsHtml(title)}</h1>`,
    ...(coach === '' ? [] : [`<p class="soft">${wordsHtml(say('by', { coach }))}</p>`]),
    blocksHtml(notices.top),
    '</header>',
    '<main>',
    ...openingSection(plan, sections, writing),
    ...(playable.length === 0 ? [] : [`<noscript><p>${escapeHtml(say('scriptsOff'))}</p></noscript>`]),
    ...sections.map((section) => clipSection(section, writing)),
    ...(keys ? [`<p class="keys"><label><input type="checkbox" checked> ${escapeHtml(say('keys'))}</label></p>`] : []),
    '</main>',
    ...documentsSection(ofSession, say),
    '<footer>',
    blocksHtml([...notices.cautions, notices.closing]),
    `<p>${escapeHtml(say('offline'))}</p>`,
    '</footer>',
    `<script type="application/json" id="data">${safeJson(data)}</script>`,
    `<script>${script.text}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}
