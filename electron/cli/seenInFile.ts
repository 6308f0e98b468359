import type { Language } from '../../engine/language/language.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { type SeenInClips, seenInClips } from '../backend/handover/seenInClips.ts';
import { findMediaTools } from '../backend/media/tools.ts';
import type { Host } from './host.ts';
import { oneLine } from './outcome.ts';
import { openReviewFile } from './reviewFile.ts';

type Wanted = { readonly language: Language; readonly names?: NameMode | undefined; readonly stills: boolean };

/** What the clips of a review file show; those that show nothing are named on standard error. */
export async function seenInFile(
  host: Host,
  file: string,
  { language, names = 'full', stills }: Wanted,
): Promise<SeenInClips> {
  const tools = await findMediaTools();
  const style = { length: 'full', tone: 'plain', language, names } as const;
  const source = await openReviewFile(host, tools, file, { ...style, joints: false });
  const seen = await seenInClips(tools, source, { stills }, { signal: host.signal, report: host.progress.show });
  host.progress.clear();
  for (const { clip, sentence } of seen.failed) host.say(oneLine(`${clip}: ${sentence}`));
  return seen;
}
