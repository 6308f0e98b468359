import { describe, expect, it } from 'vitest';
import { copiedFrame } from '../../../../renderer/review/model/copiedMoment.ts';
import { depthFlag, squatClip, thirtyFps } from '../../harness/reviewBench.ts';

const at = (frame: number) => ({ frame, ticks: frame });
const timed = (reps: ReturnType<typeof squatClip>['reps'], id = 'c1') => ({
  clip: squatClip({ id, reps }),
  table: thirtyFps,
});

/** Reps from 10 to 50 and from 100 to 180 with the stretched end half-way, and one without an end from 200. */
const own = timed([
  { index: 1, start: at(10), stretchedEnd: at(30), end: at(50) },
  { index: 2, start: at(100), stretchedEnd: at(140), end: at(180) },
  { index: 3, start: at(200) },
]);
const other = timed([{ index: 1, start: at(60), stretchedEnd: at(90), end: at(100) }], 'c2');

describe('where a copy of a flag stands', () => {
  it('is the same phase of the other rep: half-way down stays half-way down', () => {
    const flag = depthFlag({ reps: [1], at: at(20) });
    expect(copiedFrame(flag, own, { ...own, rep: 2 })).toBe(120);
    expect(copiedFrame(flag, own, { ...other, rep: 1 })).toBe(75);
    // Half-way up lies between two frames by a microsecond.
    const up = copiedFrame(depthFlag({ reps: [1], at: at(40) }), own, { ...other, rep: 1 });
    expect([94, 95]).toContain(up);
  });

  it('is as far from the start where an end is not known, or the flag stands outside its rep', () => {
    expect(copiedFrame(depthFlag({ reps: [1], at: at(20) }), own, { ...own, rep: 3 })).toBe(210);
    expect(copiedFrame(depthFlag({ reps: [2], at: at(95) }), own, { ...own, rep: 1 })).toBe(5);
  });

  it('goes to the rep of the same number on another whole set, and never outside the clip', () => {
    expect(copiedFrame(depthFlag({ reps: 'set', at: at(20) }), own, { ...other, rep: 'set' })).toBe(75);
    expect(
      copiedFrame(depthFlag({ reps: [3], at: at(299) }), own, { ...timed([{ index: 1, start: at(290) }]), rep: 1 }),
    ).toBe(299);
    const unmarked = timed([], 'c3');
    expect(copiedFrame(depthFlag({ reps: 'set', at: at(42) }), unmarked, { ...timed([], 'c4'), rep: 'set' })).toBe(42);
  });
});
