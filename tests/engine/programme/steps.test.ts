import { describe, expect, it } from 'vitest';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { exercise } from '../catalogue.ts';
import { clip, flag, reps } from '../reviews.ts';
import { foundAmong, inEnglish, kindsOf, only, planned, sets } from './sessions.ts';

const pull = { direct: ['lats'], indirect: ['biceps'] };
const pulling = (id: string, name: string, change: Partial<Exercise>): Exercise =>
  exercise({ id, name, pattern: 'vertical pull', implement: 'body weight', muscles: pull, ...change });

const pullUp = pulling('pull-up', 'Pull-up', {
  needs: ['pullUpBar'],
  ladder: {
    easier: [
      { exercise: 'machine', why: 'The help is even.' },
      { exercise: 'pulldown', why: 'It builds towards it.' },
      { exercise: 'partner', why: 'A partner helps up; the way down is your own.' },
      { exercise: 'hanging about', why: 'In words alone.' },
      { exercise: 'band', why: 'It takes tension from the stretch.' },
    ],
    harder: [],
    betterSuited: [],
  },
});
const machine = pulling('machine', 'Assisted pull-up', { implement: 'machine', needs: ['machine'] });
const pulldown = pulling('pulldown', 'Pulldown', { implement: 'cable', needs: ['cable'] });
const partner = pulling('partner', 'Partner-assisted pull-up', { needs: ['pullUpBar', 'partner'] });
const band = pulling('band', 'Band-assisted pull-up', {
  implement: 'body weight and band',
  needs: ['pullUpBar', 'band'],
});
const jump = pulling('jump', 'Jump-and-lower pull-up', { lowRepByDesign: true });
const rail = (id: string, name: string, railTiltDeg: number, pattern = 'squat'): Exercise =>
  exercise({
    ...{ id, name, pattern, implement: 'guided rail' },
    targets: { ...exercise().targets, path: { shape: 'rail', toleranceM: 0.02, railTiltDeg } },
  });
const backward = rail('backward', 'Guided-rail squat, backward', 7);
const forward = rail('forward', 'Guided-rail squat, forward', -7);
const split = rail('split', 'Guided-rail split squat', 7, 'lunge');
const found = foundAmong(pullUp, machine, pulldown, partner, band, jump, backward, forward, split);

describe('the ladder towards a lift', () => {
  it('stands in rank order with reasons for a new trainee who can hardly do it', () => {
    const finding = only(found({ experience: 'new' }, planned('pull-up', sets(3, 3))), 'ladder');
    expect(finding.advice).toEqual({
      kind: 'exercise',
      entryId: 'pull-up',
      to: ['machine', 'pulldown', 'partner', 'band'],
    });
    expect(inEnglish(finding).suggestion).toBe(
      'Take the first of these steps that suits you. (1) Assisted pull-up: the help is even. (2) Pulldown: it builds towards it. (3) Partner-assisted pull-up: a partner helps up; the way down is your own. (4) Band-assisted pull-up: it takes tension from the stretch.',
    );
  });

  it('takes the place of the remark on few reps', () => {
    expect(kindsOf(found({}, planned('pull-up', sets(3, 3))))).toEqual(['ladder']);
  });

  it('holds what is at hand alone', () => {
    const finding = only(found({ equipment: ['pullUpBar', 'partner'] }, planned('pull-up', sets(3, 3))), 'ladder');
    expect(finding.advice).toMatchObject({ to: ['partner'] });
  });

  it('is not needed by who can do it, adds load to it, practises it, or is on it already', () => {
    expect(kindsOf(found({ experience: 'new' }, planned('pull-up', sets(3, 8))))).toEqual([]);
    expect(kindsOf(found({ goal: 'strength' }, planned('pull-up', sets(5, 3, { loadKg: 20 }))))).toEqual([]);
    expect(kindsOf(found({ goal: 'strength' }, planned('pull-up', sets(5, 3))))).toEqual([]);
    expect(kindsOf(found({ goal: 'skill' }, planned('pull-up', sets(5, 2))))).toEqual([]);
    const withMachine = found({ experience: 'new' }, planned('pull-up', sets(1, 3)), planned('machine', sets(2, 8)));
    expect(kindsOf(withMachine)).not.toContain('ladder');
    expect(kindsOf(found({}, planned('pull-up', sets(3, 4)), planned('pulldown', sets(3, 10))))).toEqual([]);
  });

  it('is found on film too, where hardly any of the planned reps were done', () => {
    const failed = planned('pull-up', sets(3, 8), { clips: [clip({ reps: reps(1) })] });
    expect(only(found({}, failed), 'ladder').restsOn).toBe('film');
    const done = planned('pull-up', sets(3, 8), { clips: [clip({ reps: reps(6) })] });
    expect(kindsOf(found({}, done))).toEqual([]);
  });

  it('leaves a lift alone that is done for few reps by design', () => {
    expect(kindsOf(found({ experience: 'new' }, planned('jump', sets(3, 4))))).toEqual([]);
  });
});

describe('help by a band', () => {
  it('gives way to better help that is at hand', () => {
    const finding = only(found({}, planned('band', sets(3, 8)), planned('pulldown', sets(2, 10))), 'ladder');
    expect(finding.advice).toMatchObject({ to: ['machine', 'partner'] });
    const { what, suggestion } = inEnglish(finding);
    expect(what).toContain('helps most in the stretch');
    expect(suggestion).toMatch(
      /^These suit you better, best first\. \(1\) Assisted pull-up: the help is even\. \(2\) Partner-assisted/,
    );
  });

  it('is what there is where nothing better is at hand', () => {
    expect(kindsOf(found({ equipment: ['pullUpBar', 'band'] }, planned('band', sets(3, 8))))).toEqual([]);
  });
});

describe('a guided rail', () => {
  it('should bring the bar forward as it lowers, for the thighs and an upright back', () => {
    const finding = only(found({}, planned('backward', sets(3, 10))), 'rail');
    expect(finding.advice).toEqual({ kind: 'exercise', entryId: 'backward', to: ['forward'] });
    const { why, suggestion } = inEnglish(finding);
    expect(why).toContain('backward as it lowers pulls the trunk over');
    expect(suggestion).toContain('comes forward as it lowers');
    expect(suggestion).toContain('heels stay down');
    expect(kindsOf(found({}, planned('forward', sets(3, 10))))).toEqual([]);
  });

  it('explains a back that is seen to round, at the same cost', () => {
    const flags = [flag({ criterion: 'spinePosition', fault: 'lowBackRounds', severity: 'correct' })];
    const finding = only(found({}, planned('backward', sets(3, 10), { flags })), 'rail');
    expect(inEnglish(finding).why).toContain('explains a back that rounds at the bottom');
    expect([finding.severity, finding.restsOn]).toEqual(['prefer', 'plan']);
  });

  it('takes the coach’s word on the facing, and affects split squats less', () => {
    const flags = [flag({ criterion: 'spinePosition', fault: 'facesTheOtherWay', severity: 'adjust' })];
    const finding = only(found({}, planned('forward', sets(3, 10), { flags })), 'rail');
    expect([finding.restsOn, finding.advice.kind]).toEqual(['film', 'setUp']);
    expect(inEnglish(finding).suggestion).toContain('Split squats on the rail are affected less.');
    expect(kindsOf(found({}, planned('split', sets(3, 10))))).toEqual([]);
  });
});
