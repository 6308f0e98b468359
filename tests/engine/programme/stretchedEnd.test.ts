import { describe, expect, it } from 'vitest';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { exercise } from '../catalogue.ts';
import { allSix, flag, ticks } from '../reviews.ts';
import { foundAmong, inEnglish, kindsOf, only, planned, sets } from './sessions.ts';

const tempoWith = (pauseStretchedS: [number, number], pauseShortenedS: [number, number]): Exercise['targets'] => {
  const { targets } = exercise();
  const one = { ...targets.tempo.growth, pauseStretchedS, pauseShortenedS };
  return { ...targets, tempo: { growth: one, strength: one, skill: one } };
};
const ladderTo = (...ids: string[]): Exercise['ladder'] => ({
  easier: [],
  harder: [],
  betterSuited: ids.map((id) => ({ exercise: id, why: 'Loads the stretched end.' })),
});

const pull = { direct: ['lats', 'upper back'], indirect: ['biceps'] };
const pullUp = exercise({
  ...{ id: 'pull-up', name: 'Pull-up', pattern: 'vertical pull', hardestAt: 'shortened', muscles: pull },
  ...{ shortenedEnd: 'top, chin over the bar', stretchedEnd: 'the hang', implement: 'body weight' },
});
const row = exercise({
  ...{ id: 'row', name: 'Bent-over row', pattern: 'horizontal row', hardestAt: 'shortened', muscles: pull },
  ladder: ladderTo('cable-row'),
});
const cableRow = exercise({
  ...{ id: 'cable-row', name: 'Seated cable row', pattern: 'horizontal row', hardestAt: 'middle', muscles: pull },
  needs: ['cable'],
});
const supported = exercise({
  ...{ id: 'supported', name: 'Chest-supported row', pattern: 'horizontal row', hardestAt: 'shortened' },
  ...{ muscles: { direct: ['upper back', 'lats'], indirect: [] }, ladder: ladderTo('cable-row') },
});
const curl = exercise({
  ...{ id: 'curl', name: 'Standing curl', pattern: 'curl', compound: false, hardestAt: 'middle' },
  muscles: { direct: ['biceps'], indirect: [] },
});
const thrust = exercise({
  ...{ id: 'thrust', name: 'Hip thrust', pattern: 'hip extension', hardestAt: 'shortened', compound: true },
  ...{ muscles: { direct: ['glutes'], indirect: ['hamstrings'] }, ladder: ladderTo('rdl', 'dumbbell-rdl') },
  targets: tempoWith([0, 1], [1, 2]),
});
const bridge = exercise({
  ...{ id: 'bridge', name: 'Glute bridge', pattern: 'hip extension', implement: 'body weight', hardestAt: 'shortened' },
  ...{ muscles: { direct: ['glutes'], indirect: ['hamstrings'] }, ladder: ladderTo('rdl', 'dumbbell-rdl') },
});
const rdl = exercise({
  ...{ id: 'rdl', name: 'Romanian deadlift', pattern: 'hinge', needs: ['barbell'] },
  muscles: { direct: ['hamstrings', 'glutes'], indirect: ['spinal erectors'] },
});
const dumbbellRdl = { ...rdl, id: 'dumbbell-rdl', name: 'Dumbbell Romanian deadlift', needs: ['dumbbells' as const] };
const prone = exercise({
  ...{
    id: 'prone',
    name: 'Prone back raise',
    pattern: 'hip extension',
    implement: 'body weight',
    hardestAt: 'shortened',
  },
  ...{ compound: false, muscles: { direct: ['spinal erectors'], indirect: ['glutes', 'hamstrings'] } },
  ladder: ladderTo('raise', 'rdl'),
});
const raise = exercise({
  ...{ id: 'raise', name: '45-degree back raise', pattern: 'hip extension', hardestAt: 'middle' },
  ...{ muscles: { direct: ['glutes', 'hamstrings'], indirect: ['spinal erectors'] }, needs: ['backExtensionBench'] },
  ladder: { easier: [{ exercise: 'prone', why: '' }], harder: [], betterSuited: [] },
});
const squat = exercise({ muscles: { direct: ['quadriceps', 'glutes'], indirect: [] } });
const bench = exercise({
  id: 'bench',
  name: 'Bench press',
  muscles: { direct: ['chest'], indirect: [] },
  needs: ['bench'],
});
const floor = exercise({
  ...{ id: 'floor', name: 'Floor press', muscles: { direct: ['chest'], indirect: [] } },
  rangeCut: { by: 'the floor', fuller: 'bench' },
});
const pike = exercise({
  ...{ id: 'pike', name: 'Pike push-up', implement: 'body weight', pattern: 'vertical press' },
  ...{ muscles: { direct: ['front deltoids'], indirect: [] }, ladder: ladderTo('overhead', 'seated') },
  rangeCut: { by: 'the head meeting the floor', fuller: 'overhead', remedy: 'Put the hands on blocks.' },
});
const overhead = exercise({
  ...{
    id: 'overhead',
    name: 'Overhead press',
    muscles: { direct: ['front deltoids'], indirect: [] },
    needs: ['barbell'],
  },
});
const inverted = exercise({
  ...{
    id: 'inverted',
    name: 'Inverted row',
    implement: 'body weight',
    pattern: 'horizontal row',
    hardestAt: 'shortened',
  },
  muscles: pull,
  rangeCut: { by: 'a low support', remedy: 'Raise the supports.', shownBy: ['supportTooLow'] },
});
const seated = { ...overhead, id: 'seated', name: 'Seated dumbbell press', needs: ['dumbbells' as const] };
const found = foundAmong(
  ...[pullUp, row, cableRow, supported, curl, thrust, bridge, rdl, dumbbellRdl, prone, raise, squat],
  ...[bench, floor, pike, overhead, seated, inverted],
);
const three = (id: string, tempo?: string) => planned(id, sets(3, 10, tempo === undefined ? {} : { tempo }));

describe('seconds held at the shortened end', () => {
  it('of a pull-up, a row or a curl are better spent on the way down and in the stretch', () => {
    for (const id of ['pull-up', 'row', 'curl']) {
      const finding = only(found({}, three(id, '2-0-1-1')), 'shortened-end-pause');
      expect(inEnglish(finding).suggestion).toMatch(/^Spend them on a slower lowering and a stop in the stretch/);
      expect(finding.advice).toEqual({ kind: 'tempo', changes: [{ entryId: id, tempo: '3-1-1-0' }] });
    }
    expect(inEnglish(only(found({}, three('pull-up', '2-0-1-3')), 'shortened-end-pause')).what).toBe(
      'Pull-up is held for 3 seconds at the shortened end (top, chin over the bar), and less in the stretch.',
    );
  });

  it('are fine where the stretch gets as many, and below a second', () => {
    for (const tempo of ['3-1-1-1', '3-1-1-0', '2-0-1-0.5', '2-0-1-0']) {
      expect(kindsOf(found({}, three('pull-up', tempo)))).toEqual([]);
    }
  });

  it('are the point of a hip thrust, and a breath at the top of a squat or a press', () => {
    expect(kindsOf(found({}, three('thrust', '2-0-1-2'), three('squat', '2-0-1-1')))).toEqual([]);
    expect(kindsOf(found({}, three('squat', '3-1-1-2')))).toEqual([]);
    expect(kindsOf(found({}, three('squat', '3-0-1-2')))).toEqual(['shortened-end-pause']);
  });

  it('are said once for several lifts, for growth alone', () => {
    const finding = only(found({}, three('pull-up', '2-0-1-2'), three('curl', '2-0-1-3')), 'shortened-end-pause');
    expect(inEnglish(finding).what).toBe(
      'Pull-up and standing curl are held at the shortened end for up to 3 seconds, and less in the stretch.',
    );
    expect(kindsOf(found({ goal: 'skill' }, three('pull-up', '2-0-1-3')))).toEqual([]);
  });
});

describe('a load that is hardest at the shortened end', () => {
  it('gets an exercise that is hard elsewhere, for growth', () => {
    const finding = only(found({}, three('thrust')), 'shortened-end-load');
    expect(finding.advice).toEqual({ kind: 'exercise', entryId: 'thrust', to: ['rdl', 'dumbbell-rdl'] });
    expect(inEnglish(finding).suggestion).toBe(
      'Add the Romanian deadlift, or do it instead. Next best, in order: the dumbbell Romanian deadlift.',
    );
    expect(kindsOf(found({ goal: 'skill' }, three('thrust')))).toEqual([]);
  });

  it('only gets one that is at hand', () => {
    const finding = only(found({ equipment: ['dumbbells'] }, three('thrust')), 'shortened-end-load');
    expect(finding.advice).toMatchObject({ to: ['dumbbell-rdl'] });
    expect(kindsOf(found({ equipment: ['barbell'] }, three('row')))).toEqual([]);
    const rows = [three('row'), three('supported')];
    expect(kindsOf(found({ equipment: ['barbell', 'dumbbells', 'bench'] }, ...rows))).toEqual([]);
    expect(only(found({ equipment: 'fullGym' }, ...rows), 'shortened-end-load').advice).toMatchObject({
      to: ['cable-row'],
    });
  });

  it('is fine beside a lift that loads the same muscle long, whatever it is', () => {
    expect(kindsOf(found({}, three('thrust'), three('squat')))).toEqual([]);
    expect(kindsOf(found({}, three('row'), three('cable-row')))).toEqual([]);
  });

  it('is no matter in one exercise alone that no other loads hard in the stretch', () => {
    expect(kindsOf(found({}, three('row')))).toEqual([]);
  });

  it('is fine in a full pull-up, alone or beside a row', () => {
    expect(kindsOf(found({}, three('pull-up')))).toEqual([]);
    expect(kindsOf(found({}, three('pull-up'), three('row')))).toEqual([]);
  });

  it('is one finding for a muscle group, with names once', () => {
    const rows = found({}, three('row'), three('supported'), { ...three('row'), id: 'again' });
    expect(inEnglish(only(rows, 'shortened-end-load')).what).toMatch(
      /^Bent-over row and chest-supported row are hardest/,
    );
    const hips = inEnglish(only(found({}, three('thrust'), three('bridge')), 'shortened-end-load'));
    expect(hips.what).toMatch(/^Hip thrust and glute bridge are hardest/);
    expect(hips.what).not.toMatch(/all|\d/);
    const twice = found({}, three('thrust'), { ...three('thrust'), id: 'again' });
    expect(inEnglish(only(twice, 'shortened-end-load')).what).toMatch(/^Hip thrust is hardest/);
  });

  it('is fine as a warm-up where the floor takes it in the stretch', () => {
    expect(inEnglish(only(found({}, three('prone')), 'shortened-end-load')).suggestion).toBe(
      'Fine as a warm-up; for the work sets, use the 45-degree back raise. Next best, in order: the Romanian deadlift.',
    );
    expect(kindsOf(found({}, three('prone'), three('raise')))).toEqual([]);
    expect(kindsOf(found({}, three('prone'), three('rdl')))).toEqual([]);
  });
});

describe('range cut by the set-up', () => {
  it('gets the exercise that goes further, where it is at hand and not there already', () => {
    const { what, suggestion } = inEnglish(only(found({}, three('floor')), 'curtailed-range'));
    expect(what).toBe('Floor press: the floor ends the range before the muscles are fully stretched.');
    expect(suggestion).toContain('the bench press');
    expect(kindsOf(found({}, three('floor'), planned('bench', sets(2, 10))))).toEqual([]);
    expect(kindsOf(found({ equipment: ['dumbbells'] }, three('floor')))).toEqual([]);
  });

  it('is said once for lifts that are cut alike', () => {
    const { what } = inEnglish(only(found({}, three('pike'), { ...three('pike'), id: 'again' }), 'curtailed-range'));
    expect(what).toBe(
      'Pike push-up: the head meeting the floor ends the range before the muscles are fully stretched.',
    );
  });

  it('is a tool of its own for strength, where it can’t be helped', () => {
    expect(kindsOf(found({ goal: 'strength' }, planned('floor', sets(3, 5))))).toEqual([]);
  });

  it('is given back by the hands on blocks, or by a press that is at hand', () => {
    const said = (equipment: readonly ('barbell' | 'dumbbells' | 'wall')[]) =>
      inEnglish(only(found({ equipment: [...equipment] }, three('pike')), 'curtailed-range')).suggestion;
    expect(said(['barbell'])).toBe('Put the hands on blocks. Or do the overhead press instead.');
    expect(said(['dumbbells'])).toBe('Put the hands on blocks. Or do the seated dumbbell press instead.');
    expect(said(['wall'])).toBe('Put the hands on blocks.');
  });

  it('is found on film where the set-up need not cut it, and then costs no more than its flag', () => {
    expect(kindsOf(found({}, three('inverted')))).toEqual([]);
    const flags = [flag({ criterion: 'depth', fault: 'supportTooLow', severity: 'adjust' })];
    const finding = only(found({}, { ...three('inverted'), flags }), 'curtailed-range');
    expect(finding.restsOn).toBe('film');
    expect(inEnglish(finding).suggestion).toBe('Raise the supports.');
  });

  it('otherwise does not depend on flags, so that what would raise the grade stays exact', () => {
    const flagged = { ...three('floor'), flags: [flag({ criterion: 'depth', severity: 'correct' })] };
    expect(kindsOf(found({}, { ...flagged, ticks: ticks(...allSix) }))).toEqual(kindsOf(found({}, three('floor'))));
  });
});
