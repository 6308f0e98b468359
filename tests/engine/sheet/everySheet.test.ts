import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { toMarkdown } from '../../../engine/document/toMarkdown.ts';
import { toText } from '../../../engine/document/toText.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { sheetWebVtt } from '../../../engine/notes/noteFiles.ts';
import type { Review } from '../../../engine/review/review.ts';
import { sheetCsv } from '../../../engine/sheet/csv.ts';
import { writeSheet } from '../../../engine/sheet/writeSheet.ts';
import { catalogue, linesOf, sessions } from '../letter/sample.ts';

const sheetOf = (review: Review) => writeSheet(review, gradeSession(review, catalogue), catalogue);
const runs = { numRuns: 120 };

describe('every sheet', () => {
  it('has one row a flag, under its exercise, and says so where there is none', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const { blocks } = sheetOf(review);
        review.entries.forEach((entry, index) => {
          const table = blocks.find(({ id }) => id === `entry-${index + 1}-flags`);
          expect(table?.kind === 'table' ? table.rows.length : 0).toBe(entry.flags.length);
          expect(blocks.some(({ id }) => id === `entry-${index + 1}-none`)).toBe(entry.flags.length === 0);
        });
      }),
      runs,
    );
  });

  it('says every flag, every grade and the programme in short as in full, and nothing that is not in full', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const full = sheetOf(review);
        const short = writeSheet(review, gradeSession(review, catalogue), catalogue, { length: 'short' });
        const ids = new Set(full.blocks.map(({ id }) => id));
        expect(short.blocks.every(({ id }) => ids.has(id))).toBe(true);
        const kept = short.blocks.map(({ id }) => id);
        expect(kept).toEqual(expect.arrayContaining([...ids].filter((id) => /^grades|-flags$|^programme/.test(id))));
        expect(kept.filter((id) => /raises|tree|measures|still/.test(id))).toEqual([]);
      }),
      runs,
    );
  });

  it('lists gains that are worth something, largest first', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const table = sheetOf(review).blocks.find(({ id }) => id === 'raises-table');
        const gains = (table?.kind === 'table' ? table.rows : []).map((row) =>
          Number(
            row
              .at(-1)
              ?.map(({ text }) => text)
              .join(''),
          ),
        );
        for (const [index, gain] of gains.entries()) {
          expect(gain).toBeGreaterThan(0);
          expect(gain).toBeLessThanOrEqual(gains[index - 1] ?? 100);
        }
      }),
      runs,
    );
  });

  it('leaves nothing unresolved and ends with where it comes from', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const lines = linesOf(sheetOf(review));
        // The generated notes hold "{count}" themselves, as a hostile note would.
        for (const line of lines) expect(line).not.toMatch(/undefined|\bnull\b|NaN|\{(?!count\})\w+\}/);
        expect(lines.at(-1)).toContain('not medical advice');
        expect(lines.at(-1)).toContain('1 March 2026');
      }),
      runs,
    );
  });

  it('is the same for the same review, in every format', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const copy = structuredClone(review);
        for (const write of [toHtml, toMarkdown, toText]) expect(write(sheetOf(copy))).toBe(write(sheetOf(review)));
        for (const write of [sheetCsv, sheetWebVtt]) expect(write(copy, catalogue)).toBe(write(review, catalogue));
      }),
      { numRuns: 30 },
    );
  });
});
