import { escapeHtml, folderAddress } from '../document/lineHtml.ts';
import type { StartPageMessageId } from '../wording/english/startPage.ts';
import type { Say } from '../wording/wordings.ts';
import { fileLink } from './clipSection.ts';
import type { FileInFolder, FileKind } from './handoverFolder.ts';

/** Kinds that programs read, not people. */
const forPrograms: ReadonlySet<FileKind> = new Set(['data', 'measures']);

const endingOf = (name: string): string => /\.([A-Za-z0-9]+)$/.exec(name)?.[1]?.toUpperCase() ?? name;

/** A document once by its name, and beside it the other formats that it lies there in. */
function inItsFormats([first, ...others]: readonly FileInFolder[], say: Say<StartPageMessageId>): string {
  if (first === undefined) return '';
  const more = others.map(({ name, kind }) => {
    const ending = endingOf(name);
    const heard = `<span class="heard">${escapeHtml(say('kind', { kind }))} </span>`;
    return ` <a href="${folderAddress(name)}">${heard}${escapeHtml(ending)}</a>`;
  });
  return `<li>${fileLink(first, say)}${more.join('')}</li>`;
}

/**
 * The files of a session as items of lists: documents that people read, by what they are, and data, by their names.
 * Both keep the order of the files.
 */
export function filesOfSession(
  files: readonly FileInFolder[],
  say: Say<StartPageMessageId>,
): { readonly documents: readonly string[]; readonly data: readonly string[] } {
  const read = files.filter(({ kind }) => !forPrograms.has(kind));
  const titleOf = ({ kind, about }: FileInFolder) => `${kind} ${about ?? ''}`;
  return {
    documents: [...Map.groupBy(read, titleOf).values()].map((formats) => inItsFormats(formats, say)),
    data: files
      .filter(({ kind }) => forPrograms.has(kind))
      .map(({ name }) => `<li><a href="${folderAddress(name)}">${escapeHtml(name)}</a></li>`),
  };
}
