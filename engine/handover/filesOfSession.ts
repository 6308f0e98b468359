import { escapeHtml, folderAddress, wordsHtml } from '../document/lineHtml.ts';
import { tidy } from '../document/words.ts';
import type { StartPageMessageId } from '../wording/english/startPage.ts';
import type { Say } from '../wording/wordings.ts';
import type { FileInFolder, FileKind } from './handoverFolder.ts';

/** Kinds that programs read, not people. */
const forPrograms: ReadonlySet<FileKind> = new Set(['data', 'measures']);

type Saying = Say<StartPageMessageId>;

const endingOf = (name: string): string => /\.([A-Za-z0-9]+)$/.exec(name)?.[1]?.toLowerCase() ?? '';

const titleOf = ({ kind, about }: FileInFolder, say: Saying): string =>
  about === undefined ? say('kind', { kind }) : `${say('kind', { kind })}: ${tidy(about)}`;

/** A link to a file: what it is, what tells it from others, its format. */
export function fileLink(file: FileInFolder, say: Saying): string {
  const ending = endingOf(file.name).toUpperCase();
  const title = titleOf(file, say);
  const words = forPrograms.has(file.kind) ? file.name : ending === '' ? title : `${title} (${ending})`;
  return `<li><a href="${folderAddress(file.name)}">${wordsHtml(words)}</a></li>`;
}

/** How a file is offered to somebody with a phone: to read, to print, to put into the calendar; null for other formats. */
function offerOf({ kind, name }: FileInFolder): 'read' | 'print' | 'calendar' | null {
  if (forPrograms.has(kind)) return null;
  if (kind === 'calendar') return 'calendar';
  const ending = endingOf(name);
  return ending === 'html' ? 'read' : ending === 'pdf' ? 'print' : null;
}

/** A document by its name, with the ways to open it beside it. */
function documentItem(title: string, offered: readonly FileInFolder[], say: Saying): string {
  const links = offered.map((file) => {
    const offer = offerOf(file);
    return offer === null
      ? ''
      : `<a href="${folderAddress(file.name)}"><span class="heard">${wordsHtml(title)}: </span>${escapeHtml(say(offer))}</a>`;
  });
  return `<li><span class="what">${wordsHtml(title)}</span> ${links.join(' ')}</li>`;
}

/**
 * The files of a session as items of lists: documents to read and to print, each once, and everything else in the order of
 * the files.
 */
export function filesOfSession(
  files: readonly FileInFolder[],
  say: Saying,
): { readonly documents: readonly string[]; readonly others: readonly string[] } {
  const offered = files.filter((file) => offerOf(file) !== null);
  const byTitle = Map.groupBy(offered, (file) => titleOf(file, say));
  return {
    documents: [...byTitle].map(([title, own]) => documentItem(title, own, say)),
    others: files.filter((file) => offerOf(file) === null).map((file) => fileLink(file, say)),
  };
}

/** Links that stay folded away until they are asked for: whoever opens the page comes for the words. */
export function foldedLinks(summary: string, items: readonly string[]): string[] {
  if (items.length === 0) return [];
  return ['<details>', `<summary>${escapeHtml(summary)}</summary>`, '<ul>', ...items, '</ul>', '</details>'];
}
