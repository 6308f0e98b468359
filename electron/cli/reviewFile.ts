import { type Command, Option } from 'commander';
import { type Language, languages } from '../../engine/language/language.ts';
import { type Tone, tones } from '../../engine/letter/wording/wording.ts';
import type { LetterStyle } from '../../engine/letter/writeLetter.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { reviewUnder } from '../../engine/review/reviewUnder.ts';
import { fileSource } from '../backend/handover/fileSource.ts';
import type { HandoverSource } from '../backend/handover/handoverSource.ts';
import type { MediaTools } from '../backend/media/tools.ts';
import type { Host } from './host.ts';
import { readSession } from './readSession.ts';

const lengths = ['full', 'short'] as const;

/** Options that say how the letter of a review file is written. */
export type StyleFlags = {
  readonly length: LetterStyle['length'];
  readonly tone: Tone;
  readonly language: Language;
  readonly earlier?: readonly string[];
  readonly names?: NameMode;
};

/** Adds the options of a letter's style. */
export function addStyle(command: Command): Command {
  return command
    .addOption(new Option('--length <length>', 'how much the letter says').choices(lengths).default('full'))
    .addOption(new Option('--tone <tone>', 'how the letter sounds').choices(tones).default('plain'))
    .addOption(new Option('--language <language>', 'the language of all of it').choices(languages).default('en'))
    .option('--earlier <files...>', "the trainee's earlier sessions, to say what came of them");
}

/** A review file with its clips, to be handed over. Throws a problem with one sentence. */
export async function openReviewFile(
  host: Host,
  tools: MediaTools,
  file: string,
  { length, tone, language, earlier = [], names = 'full', joints }: StyleFlags & { readonly joints: boolean },
): Promise<HandoverSource> {
  const { review, catalogue } = await readSession(host, file);
  const before = await Promise.all(
    earlier.map(async (name) => {
      const session = await readSession(host, name);
      return reviewUnder(session.review, { from: session.catalogue, to: catalogue });
    }),
  );
  return fileSource(tools, {
    file: host.resolve(file),
    review,
    catalogue,
    style: { length, tone, language },
    names,
    earlier: before.sort((one, other) => one.session.date.localeCompare(other.session.date)),
    joints,
  });
}
