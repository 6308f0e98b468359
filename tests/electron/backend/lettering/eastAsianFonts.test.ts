import { describe, expect, it } from 'vitest';
import { openEastAsianFonts } from '../../../../electron/backend/lettering/eastAsianFonts.ts';

const countryOf = async (text: string, character: string): Promise<string | undefined> => {
  const fonts = await openEastAsianFonts(text, 400);
  return fonts.find(({ characters }) => characters.has(character))?.name.replace(/-\d+$/, '');
};

describe('fonts for Chinese, Japanese and Korean', () => {
  it('are not opened for words that have none of it', async () => {
    expect(await openEastAsianFonts('Back squat · Größe, Олена, שלום', 400)).toEqual([]);
  });

  it('are those of the country whose letters the text has', async () => {
    expect(await countryOf('田中 ひかり', '田')).toBe('noto-sans-jp');
    expect(await countryOf('田中', '田')).toBe('noto-sans-sc');
    expect(await countryOf('김민수', '김')).toBe('noto-sans-kr');
    expect(await countryOf('田中 ひかり 김민수', '김')).toBe('noto-sans-kr');
  });

  it('are opened for the characters asked, each once, as TrueType (OpenType 1.9, offset table)', async () => {
    const text = 'ウォームアップの後で、深く（しゃがむ）。刘洋慢慢下蹲，膝盖向外。천천히 앉았다가';
    const fonts = await openEastAsianFonts(text, 700);
    const characters = fonts.flatMap((font) => [...font.characters]);
    expect([...characters].sort()).toEqual([...new Set(text.replace(/ /g, ''))].sort());
    for (const { bytes } of fonts) expect(bytes.readUInt32BE(0)).toBe(0x00_01_00_00);
  });
});
