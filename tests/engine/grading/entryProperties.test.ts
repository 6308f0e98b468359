import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EntryGrade } from '../../../engine/grading/grade.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import { severities } from '../../../engine/rubric/rubric.ts';
import { clip, reps } from '../reviews.ts';
import { catalogues, entries, flagOn, isLookedAt, scoreOf, step, tickFor } from './arbitraries.ts';
import { gradeEntry } from './gradeEntry.ts';

const withFlags = (entry: Entry, ...flags: readonly Flag[]): Entry => ({ ...entry, flags: [...entry.flags, ...flags] });

/** Neither grade is above the other one where both exist. */
const expectNotAbove = (one: EntryGrade, other: EntryGrade): void => {
  const [a, b] = [scoreOf(one), scoreOf(other)];
  if (a !== null && b !== null) expect(a).toBeLessThanOrEqual(b + step);
};

const entryAndFlag = entries.chain((entry) => fc.tuple(fc.constant(entry), flagOn(entry.clips, 'further')));
const entryAndPraise = entries.chain((entry) => fc.tuple(fc.constant(entry), flagOn(entry.clips, 'further', ['keep'])));
const runs = { numRuns: 500 };

describe.each(catalogues)('counting %s', (_name, catalogue) => {
  const grade = (entry: Entry): EntryGrade => gradeEntry(entry, catalogue);

  it('a further corrective flag where somebody looked already never raises a grade', () => {
    fc.assert(
      fc.property(entryAndFlag, ([entry, flag]) => {
        fc.pre(isLookedAt(entry, flag));
        expect(grade(withFlags(entry, flag)).state.kind).toBe(grade(entry).state.kind);
        expectNotAbove(grade(withFlags(entry, flag)), grade(entry));
      }),
      runs,
    );
  });

  it('where nobody looked, a corrective flag never gives more than ticking it fine', () => {
    fc.assert(
      fc.property(entryAndFlag, ([entry, flag]) => {
        fc.pre(!isLookedAt(entry, flag));
        const ticked = { ...entry, ticks: [...entry.ticks, tickFor(flag)] };
        expectNotAbove(grade(withFlags(entry, flag)), grade(ticked));
      }),
      runs,
    );
  });

  it('praise never lowers a grade', () => {
    fc.assert(
      fc.property(entryAndPraise, ([entry, praise]) => {
        const praised = grade(withFlags(entry, praise));
        expectNotAbove(grade(entry), praised);
        if (grade(entry).state.kind === 'graded') expect(praised.state.kind).toBe('graded');
        if (grade(entry).state.kind === 'provisional') expect(praised.state.kind).not.toBe('none');
      }),
      runs,
    );
  });

  it('a plain note, wherever it stands, changes nothing of a grade', () => {
    fc.assert(
      fc.property(entryAndFlag, ([entry, flag]) => {
        const note: Flag = { ...flag, severity: null, fault: null, note: 'as last week' };
        expect(grade(withFlags(entry, note))).toEqual(grade(entry));
      }),
      runs,
    );
  });

  it('a worse severity never gives a higher grade', () => {
    fc.assert(
      fc.property(entries, fc.nat(), (entry, pick) => {
        const index = pick % Math.max(1, entry.flags.length);
        const flag = entry.flags[index];
        const worse = flag?.severity && severities[severities.indexOf(flag.severity) + 1];
        fc.pre(flag !== undefined && worse !== undefined);
        const flags = entry.flags.with(index, { ...flag, severity: worse });
        expectNotAbove(grade({ ...entry, flags }), grade(entry));
      }),
      runs,
    );
  });

  it('the same flag on more of the reps looked at never gives a higher grade', () => {
    fc.assert(
      fc.property(entryAndFlag, fc.nat(), ([drawn, flag], pick) => {
        fc.pre(flag.reps !== 'set' && flag.reps.length > 1);
        const entry = { ...drawn, ticks: [...drawn.ticks, tickFor({ ...flag, reps: 'set' })] };
        const fewer = flag.reps.slice(0, 1 + (pick % (flag.reps.length - 1)));
        expectNotAbove(grade(withFlags(entry, flag)), grade(withFlags(entry, { ...flag, reps: fewer })));
        expectNotAbove(grade(withFlags(entry, { ...flag, reps: 'set' })), grade(withFlags(entry, flag)));
      }),
      runs,
    );
  });

  it('the order of flags and ticks is irrelevant, down to the last bit', () => {
    const shuffled = entries.chain((entry) =>
      fc.tuple(
        fc.constant(entry),
        fc.shuffledSubarray(entry.flags, { minLength: entry.flags.length }),
        fc.shuffledSubarray(entry.ticks, { minLength: entry.ticks.length }),
      ),
    );
    fc.assert(
      fc.property(shuffled, ([entry, flags, ticks]) => {
        expect(grade({ ...entry, flags, ticks })).toEqual(grade(entry));
      }),
      runs,
    );
  });

  it("splitting a flag's reps into two flags changes nothing", () => {
    fc.assert(
      fc.property(entryAndFlag, fc.nat(), ([entry, flag], pick) => {
        fc.pre(flag.reps !== 'set' && flag.reps.length > 1);
        const at = 1 + (pick % (flag.reps.length - 1));
        const halves = [
          { ...flag, reps: flag.reps.slice(0, at) },
          { ...flag, id: 'rest', reps: flag.reps.slice(at) },
        ];
        const [whole, split] = [grade(withFlags(entry, flag)), grade(withFlags(entry, ...halves))];
        expect(split.state).toEqual(whole.state);
        expect(split.range).toEqual(whole.range);
        expect(split.criteria.map((one) => one.score)).toEqual(whole.criteria.map((one) => one.score));
        const nameless = (one: EntryGrade) => one.raises.map(({ flagIds: _ids, ...raise }) => raise);
        expect(nameless(split)).toEqual(nameless(whole));
      }),
      runs,
    );
  });

  it('naming a rep twice in one flag counts once', () => {
    fc.assert(
      fc.property(entryAndFlag, ([entry, flag]) => {
        fc.pre(flag.reps !== 'set');
        const doubled = { ...flag, reps: [...flag.reps, ...flag.reps] };
        expect(grade(withFlags(entry, doubled))).toEqual(grade(withFlags(entry, flag)));
      }),
      runs,
    );
  });

  it('removing a group gains exactly what was announced', () => {
    fc.assert(
      fc.property(entries, (entry) => {
        const before = grade(entry);
        for (const raise of before.raises) {
          const gone = entry.flags.filter((flag) => raise.flagIds.includes(flag.id));
          const after = grade({
            ...entry,
            flags: entry.flags.filter((flag) => !gone.includes(flag)),
            ticks: [...entry.ticks, ...gone.map(tickFor)],
          });
          expect((scoreOf(after) ?? Number.NaN) - (scoreOf(before) ?? Number.NaN)).toBeCloseTo(raise.gain, 8);
        }
      }),
      runs,
    );
  });

  it('announces every group of corrective flags once, largest gain first, none below zero', () => {
    fc.assert(
      fc.property(entries, (entry) => {
        const { raises, state } = grade(entry);
        const corrective = entry.flags.filter((flag) => flag.severity !== 'keep').map((flag) => flag.id);
        if (state.kind !== 'none') expect(raises.flatMap((raise) => raise.flagIds).sort()).toEqual(corrective.sort());
        const gains = raises.map((raise) => raise.gain);
        expect(gains).toEqual([...gains].sort((a, b) => b - a));
        expect(gains.every((gain) => gain >= 0)).toBe(true);
      }),
      runs,
    );
  });

  it('every score lies from 0 to 100, and a stop flag leaves no more than 69', () => {
    fc.assert(
      fc.property(entries, (entry) => {
        const { state, range, criteria, coverage } = grade(entry);
        const scores = [
          ...(state.kind === 'none' ? [] : [state.score]),
          ...(range === null ? [] : [range.low, range.high]),
          ...criteria.flatMap((one) => one.score ?? []),
          ...criteria.flatMap((one) => one.reps.map((rep) => rep.score)),
          coverage * 100,
        ];
        expect(scores.every((score) => score >= 0 && score <= 100)).toBe(true);
        if (state.kind !== 'none' && entry.flags.some((flag) => flag.severity === 'stop')) {
          expect(Math.max(state.score, range?.high ?? 0)).toBeLessThanOrEqual(69);
        }
      }),
      runs,
    );
  });

  it('the range: low is not above high, high not below the score, and low above it only when what was seen is under 50', () => {
    fc.assert(
      fc.property(entries, (entry) => {
        const { state, range, criteria } = grade(entry);
        if (state.kind === 'none' || range === null) return;
        expect(range.low).toBeLessThanOrEqual(range.high + step);
        expect(state.score).toBeLessThanOrEqual(range.high + step);
        if (criteria.every(({ score }) => score === null || score >= 50))
          expect(range.low).toBeLessThanOrEqual(state.score + step);
        if (
          criteria.every(({ lookedAt, cells }) =>
            !lookedAt ? cells.applicable === 0 : cells.lookedAt === cells.applicable,
          )
        ) {
          expect([range.low, range.high]).toEqual([state.score, state.score]);
        }
      }),
      runs,
    );
  });

  it('ticking all that was not looked at ends at the top of the range', () => {
    fc.assert(
      fc.property(entries, (entry) => {
        const before = grade(entry);
        fc.pre(before.range !== null);
        const all = before.criteria.flatMap(({ criterion, shownBy }) =>
          shownBy.map((clip) => ({ clip, criterion, reps: 'set' as const })),
        );
        const after = grade({ ...entry, ticks: [...entry.ticks, ...all] });
        expect(after.state.kind).toBe('graded');
        expect(scoreOf(after)).toBeCloseTo(before.range?.high ?? Number.NaN, 8);
      }),
      runs,
    );
  });
});

describe('counting cells', () => {
  const [, [, catalogue]] = catalogues;
  const grade = (entry: Entry): EntryGrade => gradeEntry(entry, catalogue);
  const unopened = fc.record({
    count: fc.nat({ max: 5 }),
    view: fc.constantFrom('side' as const, 'front' as const, null),
  });

  it('a clip that nobody opened changes no score, and never adds to what was looked at', () => {
    fc.assert(
      fc.property(entries, unopened, (entry, { count, view }) => {
        const more = clip({ id: 'unopened', view, reps: reps(count) });
        const [before, after] = [grade(entry), grade({ ...entry, clips: [...entry.clips, more] })];
        expect(after.criteria.map(({ score }) => score)).toEqual(before.criteria.map(({ score }) => score));
        expect(after.weightedMean).toBe(before.weightedMean);
        expect(after.coverage).toBeLessThanOrEqual(before.coverage);
        if (before.state.kind !== 'none' && after.state.kind !== 'none') expect(scoreOf(after)).toBe(scoreOf(before));
      }),
      runs,
    );
  });

  it('a tick on the whole set is as good as one on each of its reps', () => {
    fc.assert(
      fc.property(entries, (entry) => {
        const each = entry.ticks.flatMap((tick) => {
          const marked = entry.clips.find(({ id }) => id === tick.clip)?.reps ?? [];
          return tick.reps !== 'set' || marked.length === 0
            ? [tick]
            : marked.map(({ index }) => ({ ...tick, reps: [index] }));
        });
        expect(grade({ ...entry, ticks: each })).toEqual(grade(entry));
      }),
      runs,
    );
  });
});
