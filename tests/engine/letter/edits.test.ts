import { describe, expect, it } from 'vitest';
import { plainText, type RacksideDocument, stamp, strong, text } from '../../../engine/document/document.ts';
import { applyEdits } from '../../../engine/letter/edits.ts';
import { type Letter, letterDocument } from '../../../engine/letter/letter.ts';

/** A letter with a label, a moment, and two keeps that may change places. */
const letter = (...keeps: readonly string[]): Letter => ({
  title: 'Letter',
  language: 'en',
  author: 'Ada Quill',
  date: '2026-03-04',
  sections: [
    {
      id: 'keep',
      blocks: [
        { kind: 'paragraph', id: 'greeting', inlines: [text('Hello Mira,')] },
        { kind: 'heading', level: 2, id: 'keep', text: 'What to keep' },
        ...keeps.map((words, index) => ({
          kind: 'paragraph' as const,
          id: `keep-${index + 1}`,
          inlines: [strong('Depth.'), text(` ${words}`)],
        })),
        {
          kind: 'paragraph',
          id: 'priority-depth-shortOfDepth-back-squat-seen',
          inlines: [strong('What I saw.'), text(' short at '), stamp('a', 1_333_000, '0:01.333'), text('.')],
        },
      ],
    },
  ],
});

const wordsOf = (document: RacksideDocument, id: string): string => {
  const block = document.blocks.find((one) => one.id === id);
  return block?.kind === 'paragraph' ? plainText(block.inlines) : '';
};

describe('the edits of a letter', () => {
  it('put the coach’s words in place of a paragraph’s and keep its label', () => {
    const { document } = applyEdits(letter('Deep.'), [{ paragraph: 'keep-1', words: 'Lovely.', basis: 'Deep.' }]);
    expect(wordsOf(document, 'keep-1')).toBe('Depth. Lovely.');
    expect(wordsOf(document, 'greeting')).toBe('Hello Mira,');
  });

  it('keep pointing at a moment that the words name again, and let go of one they don’t', () => {
    const id = 'priority-depth-shortOfDepth-back-squat-seen';
    const edit = { paragraph: id, basis: 'short at 0:01.333.' };
    const named = applyEdits(letter(), [{ ...edit, words: 'Look at 0:01.333 once more' }]).document;
    expect(named.blocks.at(-1)).toMatchObject({
      inlines: [{ kind: 'strong' }, { text: ' ' }, { text: 'Look at ' }, { kind: 'time', us: 1_333_000 }, {}],
    });
    const unnamed = applyEdits(letter(), [{ ...edit, words: 'Look again' }]).document;
    expect(JSON.stringify(unnamed.blocks.at(-1))).not.toContain('"time"');
  });

  it('point at the moment that is named, not at a longer clock that holds the same figures', () => {
    const edit = { paragraph: 'priority-depth-shortOfDepth-back-squat-seen', basis: 'short at 0:01.333.' };
    const { document } = applyEdits(letter(), [{ ...edit, words: 'Not at 10:01.333 but at 0:01.333.' }]);
    expect(document.blocks.at(-1)).toMatchObject({
      inlines: [{ kind: 'strong' }, {}, { text: 'Not at 10:01.333 but at ' }, { kind: 'time' }, { text: '.' }],
    });
  });

  it('keep the breaks that were typed: a paragraph for each line, the label before the first, spaces as one', () => {
    const edit = { paragraph: 'keep-1', words: 'Lovely.\n\n# Deep  too.\r\nAnd still.\n', basis: 'Deep.' };
    const { document, lines } = applyEdits(letter('Deep.'), [edit]);
    const said = document.blocks.flatMap((block) => (block.kind === 'paragraph' ? [plainText(block.inlines)] : []));
    expect(said.slice(1, 4)).toEqual(['Depth. Lovely.', '# Deep too.', 'And still.']);
    expect(new Set(document.blocks.map(({ id }) => id)).size).toBe(document.blocks.length);
    expect(lines.find(({ id }) => id === 'keep-1')?.words).toBe(edit.words);
  });

  it('are stale when what they rest on has changed, and count all the same', () => {
    const { document, lines } = applyEdits(letter('Deeper than before.'), [
      { paragraph: 'keep-1', words: 'Lovely.', basis: 'Deep.' },
    ]);
    expect(wordsOf(document, 'keep-1')).toBe('Depth. Lovely.');
    expect(lines.find(({ id }) => id === 'keep-1')).toEqual({
      ...{ id: 'keep-1', kind: 'paragraph', label: 'Depth.', words: 'Lovely.', own: 'Deeper than before.' },
      ...{ edited: true, stale: true, writer: 'plan', part: 'keep-1' },
    });
  });

  it('wait for a paragraph that is not there now', () => {
    const edit = { paragraph: 'keep-1', words: 'Lovely.', basis: 'Deep.' };
    const { document, waiting } = applyEdits(letter(), [edit]);
    expect(waiting).toEqual([edit]);
    expect(document).toEqual(letterDocument(letter()));
  });

  it('leave a letter without any as it is, every line its own', () => {
    const { document, lines } = applyEdits(letter('Deep.'), []);
    expect(document).toEqual(letterDocument(letter('Deep.')));
    expect(lines.filter((line) => line.edited || line.stale)).toEqual([]);
    expect(lines.map(({ id }) => id)).toEqual(letterDocument(letter('Deep.')).blocks.map(({ id }) => id));
  });
});
