import fc from 'fast-check';
import { expect, it } from 'vitest';
import { packageNames } from '../../../../../electron/backend/handover/package/fileNames.ts';

const clipOf = (id: string, name: string, reps: number) => ({
  clip: {
    id,
    name,
    reps: Array.from({ length: reps }, (_, index) => ({ index: index + 1, start: { seconds: index } })),
  },
  noteCount: 3,
});

it('keeps a clip’s own name where no other file has it', () => {
  const names = packageNames([clipOf('a', 'Squat', 2), clipOf('b', 'Squat rep 3', 2)]);
  expect(names.get('a')?.annotated).toBe('clips/squat.mp4');
  expect(names.get('b')?.annotated).toBe('clips/squat-rep-3.mp4');
});

it('numbers a clip that would take the name of another’s loop, still or chapters', () => {
  const names = packageNames([
    clipOf('a', 'Squat', 2),
    clipOf('b', 'Squat rep 1', 0),
    clipOf('c', 'Squat reps', 0),
    clipOf('d', 'Squat', 0),
  ]);
  expect(['a', 'b', 'c', 'd'].map((id) => names.get(id)?.original)).toEqual([
    'originals/squat.mp4',
    'originals/squat-rep-1-2.mp4',
    'originals/squat-reps-2.mp4',
    'originals/squat-2.mp4',
  ]);
});

it('lays notes beside the clip that is played, under its name', () => {
  const names = packageNames([clipOf('a', 'Squat', 1)]).get('a');
  expect(names?.notes('originals/squat.mp4').webVtt).toBe('originals/squat.vtt');
  expect(names?.notes(null).chapters).toBe('notes/squat-reps.vtt');
});

it('never gives a name twice', () => {
  const name = fc
    .array(fc.constantFrom('Squat', ' ', 'rep', 'reps', '1', '2', '-', '01', '.mp4'), { minLength: 1, maxLength: 5 })
    .map((parts) => parts.join(''));
  fc.assert(
    fc.property(fc.array(name, { maxLength: 8 }), (clips) => {
      const named = packageNames(clips.map((each, index) => clipOf(String(index), each, 3)));
      const all = [...named.values()].flatMap(({ annotated, original, loop, still, notes }) => [
        ...[annotated, original, loop(1), loop(2), loop(3), still(0), still(1), still(2)],
        ...[annotated, original, null].flatMap((played) => Object.values(notes(played))),
      ]);
      expect(new Set(all).size).toBe(all.length);
    }),
  );
});
