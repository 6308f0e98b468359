import { describe, expect, it } from 'vitest';
import { captionAt, captionCues } from '../../../engine/narration/captions.ts';
import type { NarrationTrack } from '../../../engine/narration/narration.ts';

const trackOf = (frames: [number, number][]): NarrationTrack => ({
  frames,
  lastsUs: 20_000_000,
  looks: [{ atUs: 0, near: null, drawn: [], layers: [] }],
  shapes: [],
});
const depth = { id: 'depth', frame: 40, readingUs: 3_000_000 };
const knees = { id: 'knees', frame: 60, readingUs: 4_000_000 };

describe('when the words of flags are up', () => {
  it('from their frame on for as long as it stays', () => {
    const cues = captionCues(
      trackOf([
        [0, 10],
        [1_000_000, 40],
        [9_000_000, 10],
      ]),
      [depth],
    );
    expect(cues).toEqual([{ flagIds: ['depth'], fromUs: 1_000_000, untilUs: 9_000_000 }]);
    expect([999_999, 1_000_000, 8_999_999, 9_000_000].map((us) => captionAt(cues, us))).toEqual([
      [],
      ['depth'],
      ['depth'],
      [],
    ]);
  });

  it('long enough to be read where the picture plays over it, both ways', () => {
    const on = trackOf([
      [0, 38],
      [100_000, 39],
      [133_000, 41],
      [166_000, 42],
    ]);
    const back = trackOf([
      [0, 42],
      [100_000, 41],
      [133_000, 39],
      [166_000, 38],
    ]);
    for (const track of [on, back]) {
      expect(captionCues(track, [depth])).toEqual([{ flagIds: ['depth'], fromUs: 133_000, untilUs: 3_133_000 }]);
    }
  });

  it('not for what a jump leaps over', () => {
    expect(
      captionCues(
        trackOf([
          [0, 10],
          [1_000_000, 100],
        ]),
        [depth, knees],
      ),
    ).toEqual([]);
  });

  it('until the next flag comes, and no longer than the sound', () => {
    const track = trackOf([
      [0, 40],
      [1_000_000, 60],
      [19_000_000, 40],
    ]);
    expect(captionCues(track, [depth, knees])).toEqual([
      { flagIds: ['depth'], fromUs: 0, untilUs: 1_000_000 },
      { flagIds: ['knees'], fromUs: 1_000_000, untilUs: 19_000_000 },
      { flagIds: ['depth'], fromUs: 19_000_000, untilUs: 20_000_000 },
    ]);
  });

  it('together where they are of one frame', () => {
    const same = { ...knees, frame: 40 };
    expect(
      captionCues(
        trackOf([
          [0, 1],
          [1_000_000, 40],
          [1_100_000, 1],
        ]),
        [depth, same],
      ),
    ).toEqual([{ flagIds: ['depth', 'knees'], fromUs: 1_000_000, untilUs: 5_000_000 }]);
  });
});
