import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nameFinder, type TextKind } from '../../../engine/names/findName.ts';
import { withoutName } from '../../../engine/names/hideName.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';

/** A text with a name hidden, and the words on which a person has to decide. */
function hiding(
  name: string,
  text: string,
  { mode = 'none', kind = 'words' }: { mode?: NameMode; kind?: TextKind } = {},
) {
  const found = nameFinder(name, mode)(text, kind);
  const unsure = found.filter(({ is }) => is === 'maybe').map(({ start, end }) => text.slice(start, end));
  return { told: withoutName(text, found), unsure };
}

describe('a hidden name', () => {
  it.each<[NameMode, string]>([
    ['full', 'Well done, Robin! Robin Thale, Thale, robin.'],
    ['first', 'Well done, Robin! Robin, T., robin.'],
    ['initials', 'Well done, R.! R.T., T., R.'],
    ['none', 'Well done, Trainee! Trainee, Trainee, Trainee.'],
  ])('is told in words as %s', (mode, words) => {
    expect(hiding('Robin Thale', 'Well done, Robin! Robin Thale, Thale, robin.', { mode }).told).toBe(words);
  });

  it.each([
    ['王小明', '王小明膝盖内扣', 'Trainee膝盖内扣'],
    ['王小明', '小明，再低一点', 'Trainee，再低一点'],
    ['田中 太郎', '田中さんの膝', 'Traineeさんの膝'],
    ['田中 太郎', '田中太郎は', 'Traineeは'],
    ['アンナ', 'ｱﾝﾅの膝', 'Traineeの膝'],
    ['민수', '민수는 무릎을', 'Trainee는 무릎을'],
    ['김민수', '김민수가 민수씨의', 'Trainee가 Trainee씨의'],
    ['สมชาย ใจดี', 'คุณสมชายเข่าเข้า', 'คุณTraineeเข่าเข้า'],
    ['سارة أحمد', 'ركبة وسارة لأحمد', 'ركبة وTrainee لTrainee'],
    ['سارة أحمد', 'احمد سَارَة', 'Trainee Trainee'],
    ['דוד לוי', 'לדוד', 'לTrainee'],
    ['सीता वर्मा', 'सीताने सीता को', 'Traineeने Trainee को'],
    ['Nguyễn Thị Hường', 'Hường ơi, NGUYỄN', 'Trainee ơi, Trainee'],
    ['Anna Sommerfeld', 'Annas Knie, anna, ANNA, Anna’s', 'Trainees Knie, Trainee, Trainee, Trainee’s'],
    ['Jürgen Mönch', 'juergen, Jurgens Knie', 'Trainee, Trainees Knie'],
    ['İbrahim Işıklı', 'ibrahim, IBRAHIM, ışıklı, Işıklı’nın', 'Trainee, Trainee, Trainee, Trainee’nın'],
    ["Seán O'Neill", 'ONeill, O’Neill’s, Neill, sean', 'Trainee, Trainee’s, Trainee, Trainee'],
    ['Anna-Lena Schröder', 'Lena, Anna, AnnaLena', 'Trainee, Trainee, Trainee'],
    ['robin thale', 'Thale', 'Trainee'],
    ['Ro\u00adbin Thale', 'Ro\u200bbin', 'Trainee'],
  ])('%s: of “%s” stays “%s”, composed or not', (name, text, told) => {
    for (const form of ['NFC', 'NFD'] as const) {
      for (const other of ['NFC', 'NFD'] as const) {
        expect(hiding(name.normalize(form), text.normalize(other)).told.normalize('NFC')).toBe(told.normalize('NFC'));
      }
    }
  });

  it.each([
    ['Mark Will', 'Mark the floor, you will see', ['Mark', 'will']],
    ['Rosa Rose', 'Rose, gut; die Rosen', ['Rose', 'Rosen']],
    ['Bo Lindqvist', 'Bo, bo und Bos Knie', ['Bo', 'bo', 'Bo']],
    ['An Nguyen', 'push an inch', ['an']],
    ['Анна Павлова', 'Анны колени, Павловой, с Анной', ['Анны', 'Павловой', 'Анной']],
    ['Павел', 'Павлу и Павлом', ['Павлу', 'Павлом']],
    ['Γιώργος', 'του Γιώργου, Γιώργο', ['Γιώργου', 'Γιώργο']],
    ['Anna Sommerfeld', 'Annan polvi, Annának, Anny', ['Annan', 'Annának', 'Anny']],
    ['علي', 'على الركبة', ['على']],
    ['王明', '王明白了', ['王明']],
    ['王小明', '小王不错，王老师', ['王', '王']],
    ['さくら', 'さくらさん', ['さくら']],
  ])('%s: in “%s” a person decides on %j', (name, text, unsure) => {
    expect(hiding(name, text).unsure).toEqual(unsure);
  });

  it('is not seen in longer words, other words, and the small words of a name', () => {
    for (const text of ['Marked von oben, Bergauf', 'Annabelle', 'unmarked']) {
      expect(hiding('Mark von Berg', text)).toEqual({ told: text, unsure: [] });
      expect(hiding('Anna Thale', text)).toEqual({ told: text, unsure: [] });
    }
    expect(hiding('王小明', '明天说明')).toEqual({ told: '明天说明', unsure: [] });
    expect(hiding('राम कुमार', 'रामायण').unsure).toEqual([]);
  });

  it('is found in the names of files, where words are joined', () => {
    const inFile = (name: string, text: string) => hiding(name, text, { kind: 'fileName' });
    expect(inFile('Robin Thale', 'robin_thale-squat.mp4').told).toBe('Trainee-squat.mp4');
    expect(inFile('Robin Thale', 'RobinSquat.mp4')).toEqual({ told: 'TraineeSquat.mp4', unsure: [] });
    expect(inFile('Robin Thale', 'squatrobin.mp4')).toEqual({ told: 'squatTrainee.mp4', unsure: ['robin'] });
    expect(inFile('Zoë Müller', 'Zoë Müller Kniebeuge.mov'.normalize('NFD')).told).toBe('Trainee Kniebeuge.mov');
  });

  it('leaves the name that is shown', () => {
    expect(hiding('王小明', '王小明膝盖', { mode: 'first' }).told).toBe('小明膝盖');
    expect(hiding('Anna-Lena Thale', 'Lena, Anna Thale', { mode: 'first' }).told).toBe('Lena, Anna T.');
    expect(hiding('Anna Thale', 'Annas Knie. Anna.', { mode: 'initials' }).told).toBe('A.’s Knie. A.');
    expect(hiding('Trainee 2', 'Trainee 2, well done')).toEqual({ told: 'Trainee 2, well done', unsure: [] });
  });

  it('stays where a person has said that it is none', () => {
    const text = 'Mark the floor, Mark.';
    const found = nameFinder('Mark Thale', 'none')(text);
    expect(withoutName(text, found, ({ start }) => start === 0)).toBe('Mark the floor, Trainee.');
  });

  it('never stays as a word of its own, in whatever case, composition and company', () => {
    const word = fc.stringMatching(/^[A-ZÄÖÉŞĐ][a-zäöéçşđ]{3,8}$/);
    const spelled = fc.constantFrom(
      (name: string) => name,
      (name: string) => name.toLowerCase(),
      (name: string) => name.toUpperCase(),
      (name: string) => name.normalize('NFD'),
      (name: string) => `${name}s`,
      (name: string) => `„${name}“`,
    );
    const plain = (text: string): string[] =>
      text
        .normalize('NFC')
        .toLowerCase()
        .split(/[^\p{L}\p{M}]+/u);
    fc.assert(
      fc.property(word, word, spelled, spelled, fc.array(fc.string()), (first, last, one, other, texts) => {
        fc.pre(![first, last].some((name) => /^trainees?$/i.test(name)));
        const text = [...texts, one(first), other(last), `${first} ${last}`].join(' ');
        const left = plain(hiding(`${first} ${last}`, text).told);
        for (const name of [first, last]) {
          const hidden = name.normalize('NFC').toLowerCase();
          expect(left).not.toContain(hidden);
          expect(left).not.toContain(`${hidden}s`);
        }
      }),
    );
  });

  it('is found wherever it stands among words without spaces', () => {
    const han = fc.string({ unit: fc.constantFrom(...'膝盖内扣再低一点杠铃深蹲背部挺直'), maxLength: 8 });
    fc.assert(
      fc.property(han, han, (before, after) => {
        expect(hiding('王小明', `${before}王小明${after}`)).toEqual({ told: `${before}Trainee${after}`, unsure: [] });
      }),
    );
  });

  it('leaves a text without it as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        fc.pre(!/q/i.test(text.normalize('NFKD')));
        expect(hiding('Quirina Qvist', text).told).toBe(text);
      }),
    );
  });
});
