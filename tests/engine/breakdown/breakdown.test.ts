import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeBreakdown } from '../../../engine/breakdown/writeBreakdown.ts';
import { plainText, type RacksideDocument, type Table } from '../../../engine/document/document.ts';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import type { Review } from '../../../engine/review/review.ts';
import { shippedRubric } from '../catalogue.ts';
import { htmlFaults } from '../document/checkHtml.ts';
import { catalogue, draft, linesOf, sessionOf, sessions } from '../letter/sample.ts';

const breakdownOf = (review: Review, language: 'en' | 'de' = 'en'): RacksideDocument => {
  const spoken = translated(catalogue, language);
  return writeBreakdown(review, gradeSession(review, spoken), spoken);
};

const tablesOf = (document: RacksideDocument): Table[] => document.blocks.filter((block) => block.kind === 'table');
const cellsOf = ({ rows }: Table): string[][] => rows.map((row) => row.map(plainText));

/** Every rep short of depth: 1 − 0.6 of each rep is left, 40 of 100. */
const short = sessionOf([
  draft({ flags: [{ criterion: 'depth', fault: 'shortOfDepth', severity: 'correct', reps: 'set' }] }),
]);

describe('the breakdown', () => {
  it('shows each criterion with its score, its share and a bar of that length', () => {
    const [, criteria] = tablesOf(breakdownOf(short));
    if (criteria === undefined) throw new Error('no criteria');
    const squat = catalogue.exercises.find(({ id }) => id === 'back-squat');
    const share = squat?.criteria.find(({ id }) => id === 'depth')?.share ?? 0;
    const depth = cellsOf(criteria).find(([name]) => name === 'Depth');
    expect(depth).toEqual(['Depth', '40', `${Math.round(100 * share)}%`]);
    expect(criteria.bars?.shares).toContain(0.4);
    expect(criteria.bars?.shares.filter((each) => each === 1)).toHaveLength(criteria.rows.length - 1);
  });

  it('says what was done of an exercise, set by set, in the units of the trainee', () => {
    const [entry] = short.entries;
    if (entry === undefined) throw new Error('no entry');
    const plan = {
      sets: [
        { reps: 10, loadKg: 20 },
        { reps: 20, loadKg: 0 },
      ],
    };
    const pounds = { ...short, trainee: { ...short.trainee, units: 'lb' as const }, entries: [{ ...entry, plan }] };
    // 20 kg = 44.09 lb.
    expect(linesOf(breakdownOf(pounds)).map((line) => line.replace(/\s/g, ' '))).toContain(
      '2 sets planned, 1 filmed: 10 × 44 lb, 20 × body weight',
    );
  });

  it('has the exercises, technique, programme and the session, as the grades say', () => {
    const grade = gradeSession(short, catalogue);
    const [session] = tablesOf(breakdownOf(short));
    if (session === undefined) throw new Error('no session');
    expect(cellsOf(session).map(([part]) => part)).toEqual(['Back squat', 'Technique', 'Programme', 'Session']);
    const [technique, programme] = [grade.technique ?? -1, grade.programme ?? -1];
    expect(session.bars?.shares.slice(1, 3)).toEqual([technique / 100, programme / 100]);
  });

  it('says what would raise an exercise, by how much', () => {
    // Without its one fault an exercise of 0.75 × mean + 0.25 × lowest is at 100.
    const [entry] = gradeSession(short, catalogue).entries;
    if (entry === undefined || entry.state.kind === 'none') throw new Error('no grade');
    const gain = (100 - entry.state.score).toFixed(2);
    expect(linesOf(breakdownOf(short))).toContain(`What would raise it: Short of depth +${gain}.`);
  });

  it('tells two stops as one, which each by itself gains nothing: 69 to 100', () => {
    const unsafe = { fault: null, severity: 'stop' as const, reps: [1] };
    const twice = sessionOf([
      draft({
        flags: [
          { ...unsafe, criterion: 'spinePosition' },
          { ...unsafe, criterion: 'barPath' },
        ],
      }),
    ]);
    const lines = linesOf(breakdownOf(twice));
    expect(lines).toContain('What would raise it: Both stops together +31.00.');
    expect(lines.join()).not.toContain('no note costs points');
  });

  it('says of a grade set by hand that no note changes it', () => {
    const byHand = {
      ...short,
      entries: short.entries.map((one) => ({ ...one, override: { score: 97, reason: 'Live.' } })),
    };
    const lines = linesOf(breakdownOf(byHand));
    expect(lines).toContain('What would raise it: the grade was set by hand, and no note changes it.');
  });

  it('shows what the programme of version 3 costs, without a bar, and the rules by which scores are made', () => {
    const spoken = { ...catalogue, rubric: shippedRubric(3) };
    const planned = {
      ...short,
      entries: short.entries.map((one) => ({ ...one, plan: equalSets({ sets: 3, reps: 60 }) })),
    };
    const grade = gradeSession(planned, spoken);
    const [session] = tablesOf(writeBreakdown(planned, grade, spoken));
    const at = session === undefined ? -1 : cellsOf(session).findIndex(([part]) => part === 'Programme');
    expect(session && cellsOf(session)[at]?.[1]).toBe(`−${grade.programmeCost}`);
    expect(session?.bars?.shares[at]).toBeNull();
    const lines = linesOf(writeBreakdown(planned, grade, spoken)).join('\n');
    expect(lines).toContain('less 0.5 of the gap from the weighted mean of its criteria to 100');
    expect(lines).toContain(
      '1 (prefer), 2.5 (adjust) or 6 (correct) points for each point on the programme, 10 at most',
    );
  });

  it('says that a programme without faults takes nothing off, not that it scores 0', () => {
    for (const [language, nothing] of [
      ['en', 'nothing off'],
      ['de', 'kein Abzug'],
    ] as const) {
      const spoken = { ...translated(catalogue, language), rubric: shippedRubric(3) };
      const grade = { ...gradeSession(short, spoken), programmeCost: 0 };
      const [session] = tablesOf(writeBreakdown(short, grade, spoken));
      expect((session === undefined ? [] : cellsOf(session)).map(([, score]) => score)).toContain(nothing);
    }
  });

  it('leaves the bar of what was not looked at empty, and names what the view does not show', () => {
    const front = draft({ ticks: ['headPosition'], view: 'front' });
    const breakdown = breakdownOf(sessionOf([front]));
    const [, criteria] = tablesOf(breakdown);
    for (const [index, [, score]] of (criteria === undefined ? [] : cellsOf(criteria)).entries()) {
      expect(criteria?.bars?.shares[index] === null).toBe(score === 'not looked at');
    }
    expect(linesOf(breakdown).some((line) => line.startsWith('Not visible from here: '))).toBe(true);
  });

  it('is in German throughout', () => {
    const lines = linesOf(breakdownOf(short, 'de'));
    expect(lines).toContain(`Was die Note verbessern würde: Zu wenig Tiefe +${gainInGerman()}.`);
    expect(lines.join('\n')).not.toMatch(/\b(the|criterion|score|raise|session)\b/i);
  });

  it('holds for any session, each place with an id of its own', async () => {
    await fc.assert(
      fc.asyncProperty(sessions, fc.constantFrom('en' as const, 'de' as const), async (review, language) => {
        const breakdown = breakdownOf(review, language);
        for (const { rows, bars } of tablesOf(breakdown)) expect(bars?.shares).toHaveLength(rows.length);
        for (const line of linesOf(breakdown)) expect(line).not.toMatch(/\{\w+\}|undefined|NaN/);
        expect(await htmlFaults(toHtml(breakdown))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});

function gainInGerman(): string {
  const [entry] = gradeSession(short, catalogue).entries;
  const score = entry === undefined || entry.state.kind === 'none' ? 0 : entry.state.score;
  return (100 - score).toFixed(2).replace('.', ',');
}
