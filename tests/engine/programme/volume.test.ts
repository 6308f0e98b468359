import { describe, expect, it } from 'vitest';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { foundAmong, inEnglish, kindsOf, only, planned, sets } from './sessions.ts';

const press = (id: string, name: string, direct: string[], change: Partial<Exercise> = {}): Exercise =>
  exercise({ id, name, muscles: { direct, indirect: [] }, ...change });

const bench = press('bench', 'Bench press', ['chest', 'front deltoids', 'triceps']);
const incline = press('incline', 'Incline press', ['chest', 'front deltoids', 'triceps']);
const dip = press('dip', 'Dip', ['chest', 'triceps']);
const fly = press('fly', 'Cable fly', ['chest'], { compound: false });
const overhead = press('overhead', 'Overhead press', ['front deltoids', 'middle deltoids', 'triceps']);
const closeGrip = press('close-grip', 'Close-grip press', ['triceps', 'chest']);
const pushdown = press('pushdown', 'Pushdown', ['triceps'], { compound: false });
const squat = press('squat', 'Back squat', ['quadriceps', 'glutes', 'adductors']);
const frontSquat = press('front-squat', 'Front squat', ['quadriceps', 'glutes']);
const hinge = press('hinge', 'Romanian deadlift', ['hamstrings', 'glutes']);
const deadlift = press('deadlift', 'Deadlift', ['glutes', 'hamstrings']);
const curl = press('curl', 'Standing curl', ['biceps'], { compound: false });
const hammer = press('hammer', 'Hammer curl', ['biceps', 'forearms'], { compound: false });
const pullUp = exercise({ id: 'pull-up', name: 'Pull-up', muscles: { direct: ['lats'], indirect: ['biceps'] } });
const all = [bench, incline, dip, fly, overhead, closeGrip, pushdown, squat, frontSquat, hinge, deadlift] as const;
const found = foundAmong(...all, curl, hammer, pullUp);

const volumeOf = (...session: Parameters<typeof found>) => found(...session).filter(({ kind }) => kind === 'volume');
const four = (id: string) => planned(id, sets(4, 10));

describe('hard sets for one muscle in a session', () => {
  it('are said from eight over two exercises, with each exercise halved by name', () => {
    const finding = only(found({ goal: 'growth' }, four('bench'), four('incline')), 'volume');
    expect(finding).toMatchObject({ severity: 'prefer', entryIds: ['bench', 'incline'] });
    expect(finding.advice).toEqual({
      kind: 'sets',
      changes: [
        { entryId: 'bench', to: 2 },
        { entryId: 'incline', to: 2 },
      ],
    });
    const { what, suggestion } = inEnglish(finding);
    expect(what).toBe('8 hard sets of this session go to the chest: bench press and incline press.');
    expect(suggestion).toContain('bench press from 4 to 2; incline press from 4 to 2');
    expect(suggestion).toContain('add one set at a time');
  });

  it('count at any number of reps', () => {
    expect(volumeOf({}, planned('bench', sets(4, 6)), planned('fly', sets(4, 20)))).toHaveLength(1);
  });

  it('are no matter at two and two, nor at three and four', () => {
    expect(volumeOf({}, planned('bench', sets(2, 10)), planned('incline', sets(2, 10)))).toEqual([]);
    expect(volumeOf({}, planned('bench', sets(4, 10)), planned('incline', sets(3, 10)))).toEqual([]);
  });

  it('are said from six to a new trainee, and not from five', () => {
    const three = planned('bench', sets(3, 10));
    expect(volumeOf({ experience: 'new' }, three, planned('incline', sets(3, 10)))).toHaveLength(1);
    expect(volumeOf({ experience: 'new' }, three, planned('incline', sets(2, 10)))).toEqual([]);
  });

  it('leave out sets with more than three in reserve; a set that says nothing is hard', () => {
    const easy = planned('incline', sets(4, 10, { repsInReserve: 4 }));
    expect(volumeOf({}, four('bench'), easy)).toEqual([]);
    expect(volumeOf({}, four('bench'), planned('incline', sets(4, 10, { repsInReserve: 3 })))).toHaveLength(1);
  });

  it('leave out warm-up sets, whose loads climb towards the hard ones', () => {
    const ramp = [
      { reps: 10, loadKg: 20 },
      { reps: 8, loadKg: 40 },
      { reps: 5, loadKg: 60 },
      { reps: 8, loadKg: 100 },
    ];
    expect(volumeOf({}, planned('bench', ramp), four('incline'))).toEqual([]);
  });

  it('are heavier the more they are: above twelve to adjust, twenty for the chest to correct', () => {
    const severity = (...ids: string[]) => volumeOf({}, ...ids.map(four)).map((finding) => finding.severity);
    expect(severity('bench', 'incline', 'dip')).toEqual(['prefer']);
    expect(volumeOf({}, four('bench'), four('incline'), planned('dip', sets(5, 10)))[0]?.severity).toBe('adjust');
    const twenty = ['bench', 'incline', 'dip', 'fly'].map((id) => planned(id, sets(5, 10)));
    expect(volumeOf({}, ...twenty).map((finding) => finding.severity)).toEqual(['correct']);
  });

  it('are one finding for a muscle, which leaves exercises out where halving is not enough', () => {
    const finding = only(found({}, four('bench'), four('incline'), four('dip'), four('fly')), 'volume');
    const left = [4, 4, 4, 4].map((before, at) => {
      const entryId = ['bench', 'incline', 'dip', 'fly'][at];
      const change = finding.advice.kind === 'sets' && finding.advice.changes.find((one) => one.entryId === entryId);
      return change ? change.to : before;
    });
    expect(left.reduce((sum, one) => sum + one, 0)).toBeLessThan(8);
    expect(inEnglish(finding).suggestion).toContain('Leave out the cable fly for now.');
  });

  it('name muscles that rest on the same exercises together', () => {
    const finding = only(found({}, four('hinge'), four('deadlift')), 'volume');
    expect(inEnglish(finding).what).toBe(
      '8 hard sets of this session go to the hamstrings and glutes: Romanian deadlift and deadlift.',
    );
  });

  it('do not halve an exercise twice for two of its muscles', () => {
    const findings = volumeOf({}, four('bench'), four('close-grip'), four('pushdown'));
    expect(findings).toHaveLength(1);
  });

  it('count a half for exercises that only help', () => {
    const arms = [planned('curl', sets(3, 12)), planned('hammer', sets(3, 12))];
    expect(volumeOf({}, ...arms)).toEqual([]);
    expect(volumeOf({}, ...arms, four('pull-up'))).toMatchObject([{ entryIds: ['curl', 'hammer'] }]);
  });

  it.each([
    ['5 × 5 and 3 × 5 for strength', 'strength', 'squat', sets(5, 5), 'front-squat', sets(3, 5)],
    ['bench 3 × 6 and overhead 3 × 8', 'growth', 'bench', sets(3, 6), 'overhead', sets(3, 8)],
    ['bench 4 × 6 and overhead 4 × 8', 'growth', 'bench', sets(4, 6), 'overhead', sets(4, 8)],
    ['front squat 3 × 6 and hinge 3 × 8', 'growth', 'front-squat', sets(3, 6), 'hinge', sets(3, 8)],
    ['front squat 4 × 6 and hinge 4 × 8', 'growth', 'front-squat', sets(4, 6), 'hinge', sets(4, 8)],
    ['front squat 3 × 6 and hinge 3 × 8 for strength', 'strength', 'front-squat', sets(3, 6), 'hinge', sets(3, 8)],
    ['bench 3 × 6 and overhead 3 × 8 for strength', 'strength', 'bench', sets(3, 6), 'overhead', sets(3, 8)],
    ['bench and pushdown', 'growth', 'bench', sets(4, 8), 'pushdown', sets(4, 12)],
  ] as const)('are right as they are: %s', (_, goal, one, ofOne, other, ofOther) => {
    expect(kindsOf(found({ goal }, planned(one, ofOne), planned(other, ofOther)))).toEqual([]);
  });

  it('are right for a new trainee who trains a squat and a hinge, or a bench and an overhead press', () => {
    const three = (id: string) => planned(id, sets(3, 10));
    expect(kindsOf(found({ experience: 'new' }, three('squat'), three('hinge')))).toEqual([]);
    expect(kindsOf(found({ experience: 'new' }, three('bench'), three('overhead')))).toEqual([]);
  });

  it('may be many in one exercise alone, which is said once, from ten', () => {
    expect(volumeOf({}, planned('bench', sets(8, 10)))).toEqual([]);
    const finding = only(found({}, planned('bench', sets(10, 10))), 'volume');
    expect(inEnglish(finding).what).toBe('Bench press alone has 10 hard sets in this session.');
    expect(finding.advice).toEqual({ kind: 'sets', changes: [{ entryId: 'bench', to: 5 }] });
  });

  it('say one exercise once that stands twice in the session', () => {
    const again = { ...four('bench'), id: 'again' };
    const finding = only(found({}, four('bench'), again, four('incline')), 'volume');
    expect(inEnglish(finding).what).toContain(': bench press and incline press.');
  });
});

it('says nothing of a session whose exercises the library does not know', () => {
  expect(foundAmong(...catalogueOf().exercises)({}, four('bench'), four('incline'))).toEqual([]);
});
