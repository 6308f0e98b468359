import { describe, expect, it } from 'vitest';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { writeIndexPage } from '../../../engine/handover/indexPage.ts';
import { strokes } from '../../../engine/sheet/sheetLanguage.ts';
import { writeSheet } from '../../../engine/sheet/writeSheet.ts';
import { folderOf } from '../handover/folder.ts';
import { catalogue, draft, letterOf, linesOf, sessionOf } from '../letter/sample.ts';

const noted = sessionOf([draft({ flags: [{ criterion: 'depth', severity: 'stop', reps: [1] }] })]);
const plain = sessionOf([draft({ flags: [] })]);
const english =
  'What the marks mean: keep +: praise · prefer |: fine tuning · adjust ||: works, but costs something · correct |||: defeats the purpose · stop ×: unsafe.';

const sheetLines = (review: typeof noted, of = catalogue) =>
  linesOf(writeSheet(review, gradeSession(review, of), of)).map((line) => line.replaceAll('\u00A0', ' '));

describe('the line that says what the marks mean', () => {
  it('stands on the sheet ahead of the first mark, and nowhere where there is none', () => {
    const lines = sheetLines(noted);
    const at = lines.indexOf(english);
    expect(at).toBeGreaterThan(-1);
    const marked = lines.findIndex(
      (line, place) => place !== at && /keep \+|prefer \||adjust \||correct \||stop ×/.test(line),
    );
    expect(marked).toBeGreaterThan(at);
    expect(sheetLines(plain).some((line) => line.startsWith('What the marks mean'))).toBe(false);
  });

  it('is in German where the sheet is', () => {
    const [line = ''] = sheetLines(noted, translated(catalogue, 'de')).filter((each) => each.startsWith('Was die'));
    expect(line).toContain('Stopp ×: gefährlich');
    expect(line).toContain('korrigieren |||: verfehlt den Zweck');
  });

  it('never begins a line with the dot between two marks', () => {
    const page = writeIndexPage(folderOf(noted));
    const [, key = ''] = /<p class="marks soft">(.*?)<\/p>/.exec(page) ?? [];
    expect(key).toContain('praise\u00A0· prefer');
    expect(key).not.toContain(' · ');
  });

  it('stands with the notes of a clip on the start page', () => {
    expect(writeIndexPage(folderOf(noted)).replaceAll('\u00A0', ' ')).toContain(english);
    expect(writeIndexPage(folderOf(plain))).not.toContain('What the marks mean');
  });

  it('stands in a letter that names a severity by its word alone, and in no other', () => {
    const named = sessionOf([draft({ flags: [{ criterion: 'pauses', severity: 'correct', reps: [1, 2, 3, 4, 5] }] })]);
    expect(linesOf(letterOf(named)).join('\n')).toMatch(
      /marked “correct”(.|\n)*What the marks mean: “prefer” is fine tuning/,
    );
    const worded = sessionOf([
      draft({ flags: [{ criterion: 'depth', fault: 'shortOfDepth', severity: 'correct', reps: [1, 2, 3, 4, 5] }] }),
    ]);
    expect(linesOf(letterOf(worded)).join('\n')).not.toContain('What the marks mean');
  });
});

describe('the mark of a stop', () => {
  it('is one sign, and no row of strokes', () => {
    expect([...strokes.stop]).toHaveLength(1);
    expect(strokes.stop).not.toContain('|');
  });
});
