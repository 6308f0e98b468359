import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../engine/review/review.ts';
import { type Draft, draft, lettersText, planOf, sessionOf } from './sample.ts';

/** A lift filmed in three clips, each with the same remarks and ticks. */
function threeClips(of: Draft): Entry {
  const entry = draft(of);
  const again = <T extends { readonly clip: string }>(all: readonly T[], clip: string): T[] =>
    all.map((each) => ({ ...each, clip }));
  const ids = ['one', 'two', 'three'].map((name) => `${entry.id}-${name}`);
  return {
    ...entry,
    clips: ids.flatMap((id, at) => entry.clips.map((clip) => ({ ...clip, id, name: `Set ${at + 1}` }))),
    flags: ids.flatMap((id, at) => again(entry.flags, id).map((flag) => ({ ...flag, id: `${flag.id}-${at}` }))),
    ticks: ids.flatMap((id) => again(entry.ticks, id)),
  };
}

const quick = { severity: 'adjust' as const, criterion: 'eccentricTempo', fault: 'quickLowering' };
const lifts = ['bench-press', 'seated-cable-row', 'leg-press', 'standing-curl'];

describe('a theme over four lifts of three clips each', () => {
  const review = sessionOf(lifts.map((exercise) => threeClips({ exercise, flags: [{ ...quick, reps: 'set' }] })));
  const seen = lettersText(review)
    .split('\n')
    .find((line) => line.startsWith('What I saw.'));

  it('names every lift with its reps: three clips of five', () => {
    for (const name of ['Bench press', 'Seated cable row', 'Leg press', 'Standing curl'])
      expect(seen).toContain(`${name}, all 15 reps`);
    expect(lettersText(review)).not.toContain('more clip');
  });

  it('counts the reps that show it: two of five in each of three clips', () => {
    const some = sessionOf(lifts.map((exercise) => threeClips({ exercise, flags: [{ ...quick, reps: [4, 5] }] })));
    expect(lettersText(some)).toContain('Leg press, 6 of 15 reps');
  });

  it('names every lift where praise spans them, too', () => {
    const praise = lettersText(sessionOf(lifts.map((exercise) => threeClips({ exercise }))));
    const line = praise.split('\n').find((each) => each.startsWith('Spine position.'));
    for (const name of ['Bench press', 'Seated cable row', 'Leg press', 'Standing curl'])
      expect(line).toContain(`${name}, all 15 reps`);
  });
});

describe('a way down that took its time in several lifts', () => {
  /** Marked at the stretched end so many frames of 30 a second after each rep begins. */
  const marked = (exercise: string, frames: number): Entry => {
    const entry = draft({ exercise, reps: 6 });
    return {
      ...entry,
      clips: entry.clips.map((clip) => ({
        ...clip,
        reps: clip.reps.map((rep) => {
          const frame = 'frame' in rep.start ? rep.start.frame + frames : 0;
          return { ...rep, stretchedEnd: { frame, ticks: frame } };
        }),
      })),
    };
  };
  const lines = (...frames: number[]): string[] =>
    lettersText(
      sessionOf(frames.map((each, at) => marked(['bench-press', 'incline-dumbbell-press', 'dip'][at] ?? '', each))),
    )
      .split('\n')
      .filter((line) => line.startsWith('Eccentric tempo.'));

  it('is one line with its places: 60 frames are two seconds', () => {
    expect(lines(60, 60, 60)).toEqual([
      'Eccentric tempo. Bench press, 0:21, rep 6 of 6; Incline dumbbell press, 0:21, rep 6 of 6; Dip, 0:21, rep 6 of 6: still took two seconds down.',
    ]);
  });

  it('is not told again of a lift whose reps have no such marks', () => {
    const fly = draft({ exercise: 'cable-fly', reps: 6 });
    const review = sessionOf([marked('bench-press', 60), marked('dip', 60), fly]);
    expect(planOf(review).keeps.filter(({ criterion }) => criterion === 'Eccentric tempo')).toHaveLength(1);
  });

  it('says the shortest where they differ: two seconds and three', () => {
    expect(lines(60, 90, 60)[0]).toMatch(/still took two seconds or more down\.$/);
  });
});

describe('a hold', () => {
  const review = sessionOf(['front-plank', 'loaded-carry'].map((exercise) => draft({ exercise, reps: 1 })));

  it('has neither reps nor pauses in the letter', () => {
    const text = lettersText(review);
    expect(text).toContain('with 2 clips and 2 holds');
    expect(text).toContain('Front plank, the one hold; Loaded carry, the one hold: the same from the first second');
    expect(text).not.toMatch(/on film.*reps|^Pauses|every rep of|the one rep/im);
  });

  it('with a fault is not called the same throughout', () => {
    const sag = { severity: 'correct' as const, criterion: 'spinePosition', fault: 'hipsSag', reps: 'set' as const };
    const sagging = draft({ exercise: 'front-plank', reps: 1, flags: [sag] });
    expect(lettersText(sessionOf([sagging]))).not.toContain('the same from the first second');
  });

  it('is counted beside the reps of other lifts', () => {
    const both = sessionOf([...review.entries, draft()]);
    expect(lettersText(both)).toContain('with 3 clips, 5 reps and 2 holds on film');
    expect(planOf(both)).toMatchObject({ reps: 5, holds: 2 });
  });
});
