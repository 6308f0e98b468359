import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { renderReviewDocument } from '../../../../../electron/backend/documents/renderReviewDocument.ts';
import { type Paper, papers } from '../../../../../electron/contract/handover.ts';
import type { Review } from '../../../../../engine/review/review.ts';
import { editionOfReview } from '../../../../engine/edition/editionOfReview.ts';
import { draft, sessionOf } from '../../../../engine/letter/sample.ts';
import { openPdf, sizeOf, textOf } from './readPdf.ts';

const kinds = ['letter', 'sheet', 'breakdown'] as const;
const short = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const, reps: [1, 2] };

function withCue(cue: string): Review {
  const entry = draft({ flags: [short] });
  return sessionOf([{ ...entry, flags: entry.flags.map((flag) => ({ ...flag, cue })) }]);
}

function named(name: string): Review {
  const plain = sessionOf([draft({ flags: [short] })]);
  return { ...plain, coach: name, trainee: { ...plain.trainee, name } };
}

const edges: readonly (readonly [string, Review])[] = [
  ['a name of other scripts', named('Ålfrún Þórsdóttir 深田 🏋️')],
  ['a name as long as allowed, without a space', named('W'.repeat(200))],
  ['notes from right to left', sessionOf([draft({ flags: [{ ...short, note: 'انزل ببطء ثم اصعد بسرعة (3 مرات)' }] })])],
  ['a cue of 300 letters', withCue('c'.repeat(300))],
  ['a cue of 300 characters in words', withCue('sit down '.repeat(34).slice(0, 300))],
  ['a name of Hebrew letters as long as allowed, without a space', named('ש'.repeat(200))],
  ['a cue of 300 Arabic letters', withCue('سلام'.repeat(75))],
  ['a cue of 300 characters of Japanese', withCue('膝を外に、押し出す。'.repeat(30))],
  ['a cue of 300 characters in both directions', withCue('down לאט (3 times) ببطء '.repeat(14).slice(0, 300))],
  ['no exercise', sessionOf([])],
  ['no flags', sessionOf([draft()])],
  ['500 flags', sessionOf([draft({ flags: Array.from({ length: 500 }, () => ({ ...short, note: 'Slower.' })) })])],
];

const pdfOf = (review: Review, document: (typeof kinds)[number], paper: Paper): Promise<Uint8Array> =>
  renderReviewDocument({ edition: editionOfReview(review), document, format: 'pdf', paper });

describe.each(edges)('a session with %s', (_name, review) => {
  it.each(papers)('keeps every word within the margins of paper "%s"', async (paper) => {
    for (const kind of kinds) {
      const pdf = await openPdf(await pdfOf(review, kind, paper));
      const [width, height] = await sizeOf(pdf);
      for (const { words, box } of await textOf(pdf)) {
        const inside = box.left > 56 && box.right < width - 56 && box.bottom > 20 && box.top < height - 45;
        expect(inside, `${kind}: ${words}`).toBe(true);
      }
    }
  });
});

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-pdf-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Poppler's programs are a second reader where a machine has them. */
const hasPoppler = spawnSync('pdftotext', ['-v']).error === undefined;

describe.runIf(hasPoppler)('read with a second reader', () => {
  it.each(kinds)(
    'the %s says its parts in their order, with its title, and all its fonts are embedded',
    async (kind) => {
      const file = path.join(folder, `${kind}.pdf`);
      writeFileSync(file, await pdfOf(sessionOf([draft({ flags: [short] })]), kind, 'a4'));
      const read = execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' }).replace(/\s+/g, ' ');
      const parts = {
        letter: [
          'Letter to Alva Brook',
          'What to keep',
          'What to change',
          'Your cue',
          'Exercise by exercise',
          'Cautions',
        ],
        sheet: ['Review sheet: Alva Brook', 'Grades', 'What would raise the grade', 'Back squat: notes'],
        breakdown: [
          'Grade breakdown: Alva Brook',
          'Session:',
          'Technique',
          'Back squat:',
          'Depth',
          'What would raise it:',
        ],
      }[kind];
      const places = parts.map((words) => read.indexOf(words));
      expect(places).not.toContain(-1);
      expect([...places].sort((a, b) => a - b)).toEqual(places);
      const facts = execFileSync('pdfinfo', [file], { encoding: 'utf8' });
      expect(facts).toMatch(/^Title: +\S/m);
      expect(facts).toMatch(/^Tagged: +yes/m);
      const fonts = execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n').slice(2);
      expect(fonts.length).toBeGreaterThan(0);
      for (const font of fonts) expect(font).toMatch(/ yes +yes +yes +\d+ +\d+$/);
    },
  );
});
