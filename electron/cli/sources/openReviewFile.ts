import type { NameMode } from '../../../engine/names/shownName.ts';
import { fileSource } from '../../backend/handover/source/fileSource.ts';
import type { HandoverSource } from '../../backend/handover/source/handoverSource.ts';
import type { MediaTools } from '../../backend/media/tools/mediaTools.ts';
import type { LetterFlags } from '../options/letterOptions.ts';
import type { Host } from '../run/host.ts';
import { readEarlier, readSession } from './readSession.ts';

/** How a review file is handed over. */
export type ReviewFileOptions = LetterFlags & {
  /** In full without it. */
  readonly names?: NameMode | undefined;
  /** Measures the joints besides the disc: far slower. */
  readonly joints: boolean;
};

/** Reads a review file with its clips, ready to be handed over. Throws a problem with one sentence. */
export async function openReviewFile(
  host: Host,
  tools: MediaTools,
  file: string,
  { length, tone, language, earlier = [], names = 'full', joints }: ReviewFileOptions,
): Promise<HandoverSource> {
  const { review, catalogue } = await readSession(host, file);
  return fileSource(tools, {
    file: host.resolve(file),
    review,
    catalogue,
    style: { length, tone, language },
    names,
    earlier: await readEarlier(host, earlier, catalogue),
    joints,
  });
}
