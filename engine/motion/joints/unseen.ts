import type { Part } from './points.ts';
import { isRead, type Reading } from './posture.ts';
import type { Missing } from './sight.ts';

type Asked = 'knee' | 'hip' | 'trunkLean' | 'head';

const words: Readonly<Record<Asked, string>> = {
  knee: 'the knee’s bend',
  hip: 'the hip’s bend',
  trunkLean: 'the trunk’s lean',
  head: 'the head against the trunk',
};
const partWords: Readonly<Record<Part, string>> = {
  nose: 'The face',
  ear: 'The head',
  shoulder: 'The shoulder',
  elbow: 'The elbow',
  wrist: 'The wrist',
  hip: 'The hip',
  knee: 'The knee',
  ankle: 'The ankle',
};
const reasons: Readonly<Record<Missing['why'], string>> = {
  behindDisc: 'is behind the disc',
  outOfFrame: 'is at the edge of the picture or beyond it',
  unclear: 'can’t be made out',
};

/** A sentence for each joint that can't be seen, with what can't be told because of it. */
export function unseenSentences(readings: Readonly<Record<Asked, Reading>>): readonly string[] {
  const lost = new Map<string, string[]>();
  for (const asked of ['knee', 'hip', 'trunkLean', 'head'] as const) {
    const reading = readings[asked];
    if (isRead(reading)) continue;
    const because = `${partWords[reading.part]} ${reasons[reading.why]}`;
    lost.set(because, [...(lost.get(because) ?? []), words[asked]]);
  }
  return [...lost].map(([because, what]) => `${because}, so ${listed(what)} can’t be told.`);
}

function listed(what: readonly string[]): string {
  return what.length < 2 ? what.join('') : `${what.slice(0, -1).join(', ')} and ${what.at(-1)}`;
}
