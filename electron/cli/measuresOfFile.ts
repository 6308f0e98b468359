import type { Language } from '../../engine/language/index.ts';
import type { SetMeasurement } from '../../engine/motion/index.ts';
import { findMediaTools } from '../backend/media/index.ts';
import type { Host } from './host.ts';
import { openReviewFile } from './reviewFile.ts';

/** Measures the clips of a review file, by clip; throws what keeps one from being read. */
export async function measuresOfFile(
  host: Host,
  file: string,
  language: Language,
): Promise<ReadonlyMap<string, SetMeasurement>> {
  const style = { length: 'full', tone: 'plain', language } as const;
  const source = await openReviewFile(host, await findMediaTools(), file, { ...style, joints: false });
  const measures = new Map<string, SetMeasurement>();
  for (const { id } of source.review.entries.flatMap(({ clips }) => clips)) {
    const { clip } = await source.openClip(id, { signal: host.signal, report: host.progress.show });
    if (clip.measurement !== null) measures.set(id, clip.measurement);
  }
  host.progress.clear();
  return measures;
}
