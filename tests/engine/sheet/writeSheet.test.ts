import { describe, expect, it } from 'vitest';
import { type Block, plainText } from '../../../engine/document/document.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import type { Review } from '../../../engine/review/review.ts';
import { writeSheet } from '../../../engine/sheet/writeSheet.ts';
import { catalogue, draft, sessionOf } from '../letter/sample.ts';

const sheetOf = (review: Review): readonly Block[] =>
  writeSheet(review, gradeSession(review, catalogue), catalogue).blocks;

function table(blocks: readonly Block[], id: string): Record<string, string>[] {
  const found = blocks.find((block) => block.id === id);
  if (found?.kind !== 'table') throw new Error(`no table ${id}`);
  return found.rows.map((row) =>
    Object.fromEntries(row.map((cell, index) => [found.columns[index]?.label ?? '', plainText(cell)])),
  );
}

/** Depth short on one rep of five, everything else ticked. */
const oneShort = sessionOf([
  draft({ flags: [{ criterion: 'depth', fault: 'shortOfDepth', severity: 'correct', reps: [4], note: 'High.' }] }),
]);

describe('the sheet', () => {
  it('shows the tree by which a grade comes about: one rep at 40, four at 100, 88 on depth', () => {
    const [depth] = table(sheetOf(oneShort), 'entry-1-tree-table').filter((row) => row.Criterion === 'Depth');
    expect(depth).toMatchObject({ Score: '88', Reps: '1: 100; 2: 100; 3: 100; 4: 40; 5: 100' });
  });

  it('lists what would raise the grade with its gain to two decimals, largest first', () => {
    const review = sessionOf([
      draft({
        flags: [
          { criterion: 'headPosition', severity: 'prefer', reps: [1] },
          { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct', reps: 'set' },
        ],
      }),
    ]);
    const rows = table(sheetOf(review), 'raises-table');
    expect(rows.map((row) => row.Note)).toEqual(['Short of depth', 'Head position']);
    expect(rows[0]?.Gain).toMatch(/^\+\d+\.\d{2}$/);
    const gains = rows.map((row) => Number(row.Gain));
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
  });

  it('puts remarks in the order of their times, each severity with its word and its strokes', () => {
    const severities = ['keep', 'prefer', 'adjust', 'correct', 'stop'] as const;
    const flags = severities.map((severity) => ({ criterion: 'depth', severity, reps: [1] }));
    const entry = draft({ flags });
    const shuffled = { ...entry, flags: entry.flags.toReversed() };
    const rows = table(sheetOf(sessionOf([shuffled])), 'entry-1-flags');
    expect(rows.map((row) => row.Severity?.replace('\u00A0', ' '))).toEqual([
      'keep +',
      'prefer |',
      'adjust ||',
      'correct |||',
      'stop ×',
    ]);
    // Frames 40 to 44 at 30 a second.
    expect(rows.map((row) => row.Time?.slice(0, 8))).toEqual([
      '0:01.333',
      '0:01.367',
      '0:01.400',
      '0:01.433',
      '0:01.467',
    ]);
  });

  it('says what was seen, the coach’s note and the cue', () => {
    const [row] = table(sheetOf(oneShort), 'entry-1-flags');
    const fault = catalogue.exercises
      .find(({ id }) => id === 'back-squat')
      ?.faults.find(({ id }) => id === 'shortOfDepth');
    expect(row?.Rep).toBe('4');
    expect(row?.Seen?.toLowerCase()).toBe(`${fault?.seen}. high.`);
    expect(row?.Cue).toBe(fault?.cue.outcome);
  });

  it('tells the clips of one exercise apart', () => {
    const entry = draft({ flags: [{ criterion: 'depth', severity: 'adjust', reps: [1] }] });
    const [first] = entry.clips;
    if (first === undefined) throw new Error('no clip');
    const two = { ...entry, clips: [first, { ...first, id: 'second', name: 'Set 2' }] };
    expect(table(sheetOf(sessionOf([two])), 'entry-1-flags')[0]?.Clip).toBe('Back squat, set 1');
    expect(table(sheetOf(sessionOf([entry])), 'entry-1-flags')[0]).not.toHaveProperty('Clip');
  });

  it('says plainly that there is no grade and no remark', () => {
    const blocks = sheetOf(sessionOf([draft({ ticks: [] })]));
    expect(table(blocks, 'grades-table').map((row) => row.Grade)).toEqual(['none', 'none']);
    const lines = blocks.flatMap((block) => (block.kind === 'paragraph' ? [plainText(block.inlines)] : []));
    expect(lines).toContain('No notes on this exercise.');
    expect(lines.join('\n')).toContain('Back squat: no grade. Nothing has been looked at yet.');
  });
});
