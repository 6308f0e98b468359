import type { Edition } from '../../../engine/edition/edition.ts';
import type { Review } from '../../../engine/review/review.ts';
import { fileSource } from '../../backend/handover/source/fileSource.ts';
import type { HandoverSource } from '../../backend/handover/source/handoverSource.ts';
import type { MediaTools } from '../../backend/media/tools/mediaTools.ts';
import { footageOutside } from '../../backend/reviews/footageOutside.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { FootageOutside } from '../options/footageOutside.ts';
import type { Host } from '../run/host.ts';
import { oneLine } from '../run/outcome.ts';

type ReviewFile = {
  readonly file: string;
  readonly edition: Edition;
  readonly joints: boolean;
  readonly footageOutside: FootageOutside;
};

/** The clips of a review file, to be measured and shown. Throws `conflict` with the paths for footage outside that was not allowed. */
export async function reviewClips(
  host: Host,
  tools: MediaTools,
  { file, edition, joints, footageOutside: allowed }: ReviewFile,
): Promise<HandoverSource> {
  const asked = host.resolve(file);
  if (allowed !== true) await refuseFootageOutside(file, asked, edition.source.review);
  return fileSource(tools, { file: asked, edition, joints });
}

async function refuseFootageOutside(file: string, asked: string, review: Review): Promise<void> {
  const outside = await footageOutside(asked, review);
  if (outside.length > 0) throw asksFirst(file, outside, 'nothing was written');
}

/** Names the footage that a review file has outside its own folder, what came of that, and the option that allows it. */
export function asksFirst(
  file: string,
  outside: readonly string[],
  outcome: 'nothing was imported' | 'nothing was written',
): ProblemError {
  const paths = outside.map((each) => `"${oneLine(each)}"`).join(', ');
  return ProblemError.inWords(
    'conflict',
    `"${oneLine(file)}" names footage outside its own folder (${paths}), so ${outcome}; add --footage-outside if you trust it.`,
  );
}
