import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgingDataOf } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { reviewWithName } from '../../../engine/edition/shownReview.ts';
import { type NameMode, nameHider, nameModes, shownName } from '../../../engine/names/shownName.ts';
import { parseReview } from '../../../engine/review/parseReview.ts';

describe('a name as the trainee wants it', () => {
  it.each<[string, NameMode, string]>([
    ['Robin Thale', 'full', 'Robin Thale'],
    ['Robin Thale', 'first', 'Robin'],
    ['Robin Thale', 'initials', 'R.T.'],
    ['Robin Thale', 'none', 'Trainee'],
    ['José-María de la Cruz', 'first', 'José-María'],
    ['Ágnes Óvári', 'initials', 'Á.Ó.'],
    ['李小龙', 'initials', '李.'],
    ['سارة أحمد', 'first', 'سارة'],
  ])('%s, %s: %s', (name, mode, shown) => {
    expect(shownName(name, mode)).toBe(shown);
  });

  it.each<[NameMode, string]>([
    ['full', 'Well done, Robin! Robin Thale, Thale, robin.'],
    ['first', 'Well done, Robin! Robin, T., robin.'],
    ['initials', 'Well done, R.! R.T., T., robin.'],
    ['none', 'Well done, Trainee! Trainee, Trainee, robin.'],
  ])('is told in words as %s', (mode, words) => {
    expect(nameHider('Robin Thale', mode)('Well done, Robin! Robin Thale, Thale, robin.')).toBe(words);
  });

  it('leaves longer words and the small words of a name alone', () => {
    const hide = nameHider('Mark von Berg', 'none');
    expect(hide('Marked von oben, Bergauf')).toBe('Marked von oben, Bergauf');
    expect(hide('Mark, Berg')).toBe('Trainee, Trainee');
  });

  it('is found in file names whatever their capitals', () => {
    expect(nameHider('Robin Thale', 'none')('robin_thale-squat.mp4', { anyCase: true })).toBe('Trainee-squat.mp4');
  });

  it('never leaves a hidden name standing alone', () => {
    const word = fc.stringMatching(/^[A-Z][a-z]{2,8}$/);
    fc.assert(
      fc.property(word, word, fc.array(fc.string()), (first, last, texts) => {
        fc.pre(![first, last].includes('Trainee'));
        const text = [...texts, first, last, `${first} ${last}`].join(' ');
        const told = nameHider(`${first} ${last}`, 'none')(text);
        expect(told.split(/[^\p{L}\p{M}]+/u)).not.toContain(first);
        expect(told.split(/[^\p{L}\p{M}]+/u)).not.toContain(last);
      }),
    );
  });
});

describe('a review that leaves the desk', () => {
  const name = 'Quirina Zabelthau';
  const written = {
    format: 'rackside-review',
    version: 4,
    trainee: { name },
    session: {
      date: '2026-03-01',
      title: `Legs with ${name}`,
      notes: `${name} slept well`,
      painNote: 'Quirina says: a knee',
      override: { score: 80, reason: 'Quirina is back after a break' },
    },
    entries: [
      {
        id: 'squat',
        exercise: 'back-squat',
        override: { score: 80, reason: 'Zabelthau lifts' },
        clips: [
          {
            id: 'a',
            name: 'quirina zabelthau set 1.mp4',
            path: '/home/quirina/set-1.mp4',
            reps: [{ index: 1, start: { seconds: 1 } }],
            drawings: [
              {
                id: 'd',
                shape: 'text',
                points: [{ x: 1, y: 1 }],
                text: 'Quirina!',
                from: { seconds: 1 },
                to: { seconds: 2 },
              },
            ],
          },
        ],
        flags: [
          {
            id: 'f',
            clip: 'a',
            criterion: 'depth',
            severity: 'adjust',
            reps: [1],
            at: { seconds: 1 },
            note: 'Quirina, deeper',
            cue: 'Zabelthau!',
          },
        ],
      },
    ],
  };

  it.each(nameModes.filter((mode) => mode !== 'full'))('tells nothing of a name but as %s', (mode) => {
    const judging = judgingDataOf(process.cwd());
    const parsed = parseReview(JSON.parse(JSON.stringify(written)), judging.catalogue(1));
    if (!parsed.ok) throw new Error(parsed.sentence);
    const told = JSON.stringify(reviewWithName(parsed.review, mode)).toLowerCase();
    expect(told).not.toContain('zabelthau');
    expect(told).not.toContain('/home/');
    if (mode !== 'first') expect(told).not.toContain('quirina');
  });
});
