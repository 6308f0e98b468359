import { type Edition, editionOf } from '../../../engine/edition/edition.ts';
import type { LetterStyle } from '../../../engine/letter/style.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import type { Host } from '../run/host.ts';
import { readEarlier, readSession, type Session } from './readSession.ts';

/** How a review file is read, as options say it: in full, plain and in English without them. */
export type EditionFlags = Partial<LetterStyle> & {
  /** How the trainee is named; in full without it. */
  readonly names?: NameMode | undefined;
  /** Files of the trainee's earlier sessions. */
  readonly earlier?: readonly string[] | undefined;
};

/** Reads a review file as the edition that every document of it is made from. Throws a problem with one sentence. */
export async function readEdition(host: Host, file: string, flags: EditionFlags = {}): Promise<Edition> {
  return editionOfSession(host, await readSession(host, file), flags);
}

/** The edition of a review that is at hand. Reads the earlier sessions that `flags` name. */
export async function editionOfSession(
  host: Host,
  { review, catalogue }: Session,
  { length = 'full', tone = 'plain', language = 'en', names = 'full', earlier = [] }: EditionFlags,
): Promise<Edition> {
  const before = await readEarlier(host, earlier, catalogue);
  return editionOf({ review, catalogue, style: { length, tone, language }, names, earlier: before });
}
