import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Block, plainText, text } from '../../../engine/document/document.ts';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { toMarkdown } from '../../../engine/document/toMarkdown.ts';
import { toText } from '../../../engine/document/toText.ts';
import { applyEdits } from '../../../engine/letter/edits.ts';
import { type Letter, letterDocument } from '../../../engine/letter/letter.ts';
import { type LetterShape, plannedShape } from '../../../engine/letter/shape.ts';

const line = (id: string, fixed?: 'fixed'): Block => ({
  ...{ kind: 'paragraph', id, inlines: [text(`${id}.`)] },
  ...(fixed && { fixed: true }),
});
const heading = (id: string, level: 2 | 3 = 2): Block => ({ kind: 'heading', level, id, text: id });
const notice = (id: string): Block => ({ kind: 'notice', id, title: id, paragraphs: [[text(`${id} words`)]] });

type Noted = { readonly pain: boolean; readonly stop: boolean; readonly keeps: readonly string[] };

/** A letter with everything that a letter can hold, as `writeLetter` lays it out. */
const letterOf = ({ pain, stop, keeps }: Noted): Letter => ({
  ...{ title: 'Letter', language: 'en', author: 'Ada Quill', date: '2026-03-04' },
  sections: [
    { id: 'opening', blocks: [line('greeting'), line('opening')] },
    { id: 'pain', blocks: pain ? [notice('pain')] : [] },
    { id: 'unsafe', blocks: stop ? [notice('stop')] : [] },
    { id: 'overall', blocks: [line('overall')] },
    { id: 'keep', blocks: keeps.length === 0 ? [] : [heading('keep'), ...keeps.map((name) => line(`keep-${name}`))] },
    {
      id: 'change',
      blocks: [
        heading('change'),
        line('change-intro'),
        heading('priority-spine', 3),
        line('priority-spine-load', 'fixed'),
        heading('priority-depth', 3),
        {
          ...{ kind: 'picture', id: 'priority-depth-still', source: 'a.jpg', alt: 'a', caption: 'a' },
          beside: ['priority-depth-seen', 'priority-depth-why'],
        },
        line('priority-depth-seen'),
        line('priority-depth-why'),
      ],
    },
    {
      id: 'programme',
      blocks: [
        heading('programme'),
        line('programme-order'),
        { kind: 'list', id: 'programme-order-steps', ordered: false, items: [[text('first the squat')]] },
      ],
    },
    { id: 'film', blocks: [heading('film'), line('film-afterPain', 'fixed'), line('film-again')] },
    { id: 'cautions', blocks: [notice('cautions')] },
    { id: 'closing', blocks: [line('sign-off'), line('basis', 'fixed')] },
  ],
});

const plain = letterOf({ pain: false, stop: false, keeps: ['tempo', 'depth'] });
const idsOf = (letter: Letter, shape: Partial<LetterShape>): string[] =>
  applyEdits(letter, [], { ...plannedShape, ...shape }).document.blocks.map(({ id }) => id);
const plannedIds = letterDocument(plain).blocks.map(({ id }) => id);
const own = (id: string, words = 'Mine.') => ({ id, words, basis: '' });
/** An order with one id put after another. */
const moved = (id: string, after: string, order = plannedIds): string[] => {
  const others = order.filter((one) => one !== id);
  return others.toSpliced(others.indexOf(after) + 1, 0, id);
};

describe('a paragraph that is left out', () => {
  it('is gone with the steps below it, and its heading with it where nothing else stands under it', () => {
    expect(idsOf(plain, { leftOut: ['programme-order'] })).toEqual(
      plannedIds.filter((id) => !['programme', 'programme-order', 'programme-order-steps'].includes(id)),
    );
    expect(idsOf(plain, { leftOut: ['keep-tempo'] })).toEqual(plannedIds.filter((id) => id !== 'keep-tempo'));
  });

  it('is listed in the words it had, the coach’s where they wrote some', () => {
    const edits = [{ paragraph: 'keep-depth', words: 'Deep!', basis: 'keep-depth.' }];
    const { leftOut, lines } = applyEdits(plain, edits, { ...plannedShape, leftOut: ['keep-depth', 'greeting'] });
    expect(leftOut.map(({ id, words }) => [id, words])).toEqual([
      ['greeting', 'greeting.'],
      ['keep-depth', 'Deep!'],
    ]);
    expect(lines.map(({ id }) => id)).not.toContain('greeting');
  });

  it('takes the picture beside it along once all that it stands beside is left out', () => {
    const first = idsOf(plain, { leftOut: ['priority-depth-seen'] });
    expect(first).toContain('priority-depth-still');
    expect(idsOf(plain, { leftOut: ['priority-depth-seen', 'priority-depth-why'] })).not.toContain(
      'priority-depth-still',
    );
  });
});

describe('the coach’s order', () => {
  it('puts a paragraph where it was moved, and leaves the rest', () => {
    const order = moved('overall', 'keep-depth');
    expect(idsOf(plain, { order })).toEqual(order);
  });

  it('has a paragraph of the coach’s own between the planned ones, a paragraph for each line, beside the picture', () => {
    const order = moved('own-1', 'priority-depth-seen');
    const { document } = applyEdits(plain, [], { ...plannedShape, order, own: [own('own-1', 'One.\n\nTwo.')] });
    const ids = document.blocks.map(({ id }) => id);
    const at = ids.indexOf('priority-depth-seen');
    expect(ids.slice(at, at + 4)).toEqual(['priority-depth-seen', 'own-1', 'own-1-break-2', 'priority-depth-why']);
    const picture = document.blocks.find(({ kind }) => kind === 'picture');
    expect(picture).toMatchObject({ beside: expect.arrayContaining(['own-1', 'own-1-break-2', 'priority-depth-why']) });
  });

  it('keeps a moved paragraph with what it came after when other paragraphs come and go', () => {
    const order = moved('own-1', 'keep-tempo');
    const shape = { order, own: [own('own-1')] };
    const later = idsOf(letterOf({ pain: false, stop: false, keeps: ['grip', 'depth'] }), shape);
    // "tempo" is gone: the own paragraph stands under the same heading still; "grip" is new and stands where it was planned.
    expect(later.slice(later.indexOf('keep'), later.indexOf('change'))).toEqual([
      'keep',
      'keep-grip',
      'own-1',
      'keep-depth',
    ]);
  });

  it('lets nothing stand before pain that was noted since', () => {
    const order = moved('own-1', 'greeting');
    const shape = { order, own: [own('own-1')] };
    expect(idsOf(plain, shape).slice(0, 3)).toEqual(['greeting', 'own-1', 'opening']);
    const ids = idsOf(letterOf({ pain: true, stop: true, keeps: [] }), shape);
    expect(ids.slice(0, 5)).toEqual(['greeting', 'opening', 'pain', 'stop', 'own-1']);
  });

  it('lets nothing stand after the last line', () => {
    expect(idsOf(plain, { order: moved('greeting', 'basis') }).at(-1)).toBe('basis');
    expect(idsOf(plain, { own: [own('own-1')] }).slice(-2)).toEqual(['own-1', 'basis']);
  });
});

describe('a paragraph of the coach’s own', () => {
  const stale = (basis: string, grounds: string): boolean | undefined =>
    applyEdits(plain, [], { ...plannedShape, own: [{ ...own('own-1'), basis }] }, grounds).lines.find(
      ({ id }) => id === 'own-1',
    )?.stale;

  it('is stale once pain or something unsafe was noted after it was written, and not when it has gone', () => {
    expect(stale('', '')).toBe(false);
    expect(stale('', 'knee')).toBe(true);
    expect(stale('knee', 'knee')).toBe(false);
    expect(stale('knee', '')).toBe(false);
  });

  it('has a line without words while it is being written, and no place in the letter', () => {
    const { lines, document } = applyEdits(plain, [], { ...plannedShape, own: [own('own-1', ' ')] });
    expect(lines.find(({ id }) => id === 'own-1')).toMatchObject({ writer: 'coach', words: ' ' });
    expect(document).toEqual(letterDocument(plain));
  });
});

it('keeps the breaks of a paragraph in every format', () => {
  const edit = { paragraph: 'opening', words: 'First line.\nSecond line.', basis: '' };
  const { document } = applyEdits(plain, [edit]);
  expect(toText(document)).toContain('First line.\n\nSecond line.\n');
  expect(toMarkdown(document)).toContain('First line.\n\nSecond line.\n');
  expect(toHtml(document)).toMatch(/<p id="opening">First line\.<\/p>\n<p id="opening-break-2">Second line\.<\/p>/);
});

const noted = fc.record({
  pain: fc.boolean(),
  stop: fc.boolean(),
  keeps: fc.uniqueArray(fc.constantFrom('tempo', 'depth', 'grip'), { maxLength: 3 }),
});
const anyId = fc.constantFrom(...plannedIds, 'pain', 'stop', 'keep-grip', 'own-1', 'own-2', 'gone');
const shapes = fc.record({
  own: fc.subarray([own('own-1'), own('own-2', 'A.\nB.')]),
  leftOut: fc.uniqueArray(anyId, { maxLength: 20 }),
  order: fc.uniqueArray(anyId, { maxLength: 40 }),
});
const words = fc.constantFrom('', ' ', 'Forget the warnings.\nGo heavy.');

it('holds every notice, table and fixed line of the letter in place, whatever the coach made of the rest', () => {
  fc.assert(
    fc.property(noted, shapes, fc.uniqueArray(anyId), words, (what, shape, edited, said) => {
      const letter = letterOf(what);
      const edits = edited.map((paragraph) => ({ paragraph, words: said, basis: '' }));
      const { document, lines, leftOut, order } = applyEdits(letter, edits, shape);
      const stays = (block: Block): boolean =>
        block.kind === 'notice' || (block.kind === 'paragraph' && block.fixed === true);
      expect(document.blocks.filter(stays)).toEqual(letterDocument(letter).blocks.filter(stays));
      const ids = document.blocks.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids.at(-1)).toBe('basis');
      const first = ids.filter((id) => !/^(?:greeting|opening)/.test(id));
      const due = [...(what.pain ? ['pain'] : []), ...(what.stop ? ['stop'] : [])];
      expect(first.slice(0, due.length)).toEqual(due);
      // Nothing is lost: each paragraph is told or listed as left out.
      const planned = letterDocument(letter).blocks.flatMap((block) =>
        block.kind === 'paragraph' && block.fixed !== true ? [block.id] : [],
      );
      const known = [...lines, ...leftOut].filter(({ kind }) => kind === 'paragraph').map(({ id }) => id);
      expect(known.sort()).toEqual([...planned, ...shape.own.map(({ id }) => id)].sort());
      expect(leftOut.every(({ id }) => shape.leftOut.includes(id))).toBe(true);
      // Saving the order that is shown changes nothing.
      expect(applyEdits(letter, edits, { ...shape, order }).document).toEqual(document);
      for (const block of document.blocks) {
        if (block.kind === 'paragraph') expect(plainText(block.inlines)).not.toContain('\n');
      }
    }),
    { numRuns: 300 },
  );
});
