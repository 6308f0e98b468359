import type { NameMode } from '../../engine/handover/shownName.ts';
import type { Language } from '../../engine/language/index.ts';
import { stillsOfSession } from '../backend/handover/index.ts';
import { findMediaTools } from '../backend/media/index.ts';
import type { Host } from './host.ts';
import { openReviewFile } from './reviewFile.ts';

type Told = { readonly language: Language; readonly names?: NameMode | undefined };

/** A picture of each remark of a review file, by the flag's id. */
export async function stillsOfFile(host: Host, file: string, { language, names = 'full' }: Told) {
  const tools = await findMediaTools();
  const style = { length: 'full', tone: 'plain', language, names } as const;
  const source = await openReviewFile(host, tools, file, { ...style, joints: false });
  const stills = await stillsOfSession(tools, source, { signal: host.signal, report: host.progress.show });
  host.progress.clear();
  return stills;
}
