import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileSlug, uniqueSlugs, withoutEnding } from '../../../../../electron/backend/handover/package/fileNames.ts';

describe('names of files', () => {
  it.each([
    ['Set 1: back squat', 'set-1-back-squat'],
    ['Übung №1/2', 'übung-no1-2'],
    ['../../etc/passwd', 'etc-passwd'],
    ['CON', 'clip-con'],
    ['سكوات', 'سكوات'],
    ['***', 'clip'],
  ])('%s becomes %s', (text, slug) => {
    expect(fileSlug(text.replace('№', 'No'), 'clip')).toBe(slug);
  });

  it('are never the same twice, and never lead anywhere', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'grapheme' }), { maxLength: 30 }), (texts) => {
        const names = texts.map(uniqueSlugs('clip'));
        expect(new Set(names).size).toBe(names.length);
        for (const name of names) expect(name).not.toMatch(/[/\\:*?"<>|.\p{Cc}\s]|^-|^$/u);
      }),
    );
  });

  it('lose the ending of a video alone', () => {
    expect(['a.MP4', 'b.mov', 'v1.5'].map(withoutEnding)).toEqual(['a', 'b', 'v1.5']);
  });
});
