import { describe, expect, it } from 'vitest';
import { judgingDataOf } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { toldTexts } from '../../../engine/edition/namesInSession.ts';
import { isNameless, type NameMode, namelessBeside, nameModes, shownName } from '../../../engine/names/shownName.ts';
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
    ['王小明', 'first', '小明'],
    ['欧阳娜娜', 'first', '娜娜'],
    ['김민수', 'first', '민수'],
    ['田中 太郎', 'first', '田中'],
    ['سارة أحمد', 'first', 'سارة'],
  ])('%s, %s: %s', (name, mode, shown) => {
    expect(shownName(name, mode)).toBe(shown);
  });
});

it('tells nameless people apart', () => {
  expect(namelessBeside([])).toBe('Trainee');
  expect(namelessBeside(['Mira', 'Trainee', 'trainee 2'])).toBe('Trainee 3');
  expect(['Trainee', 'Trainee 12', ' trainee '].map(isNameless)).toEqual([true, true, true]);
  expect(['Trainee Holt', 'T.', 'Mira'].map(isNameless)).toEqual([false, false, false]);
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
    const catalogue = judging.catalogue(1);
    const parsed = parseReview(JSON.parse(JSON.stringify(written)), catalogue);
    if (!parsed.ok) throw new Error(parsed.sentence);
    const texts = { review: parsed.review, edits: [], own: [] };
    const told = JSON.stringify(toldTexts(texts, mode, catalogue, []).review).toLowerCase();
    expect(told).not.toContain('zabelthau');
    expect(told).not.toContain('/home/');
    if (mode !== 'first') expect(told).not.toContain('quirina');
  });
});
