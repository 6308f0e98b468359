import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { openFaces, setFace } from '../../../../../../electron/backend/handover/render/overlay/faces.ts';
import { openPainter } from '../../../../../../electron/backend/handover/render/overlay/painter.ts';
import { paintPlate } from '../../../../../../electron/backend/handover/render/overlay/plate.ts';
import { noteAt } from '../../shownClip.ts';

const size = { width: 96, height: 64 };

/** How much ink a word leaves, row by row of the picture's pixels. */
async function inkOf(words: string, weight: 400 | 700 = 400): Promise<Uint8ClampedArray> {
  const pen = createCanvas(size.width, size.height).getContext('2d');
  await openFaces(pen, GlobalFonts, words);
  setFace(pen, 40, weight);
  pen.fillText(words, 4, 48);
  return pen.getImageData(0, 0, size.width, size.height).data.filter((_, place) => place % 4 === 3);
}

const total = (ink: Uint8ClampedArray): number => ink.reduce((sum, cover) => sum + cover, 0);

describe('letters of other scripts in a picture', () => {
  // Every character that no font has is drawn as the same box.
  it.each(['שכ', 'طق', '深膝', 'ひモ', '김민', '刘洋', 'Ґю'])(
    '%s are two different shapes, and no boxes',
    async (pair) => {
      const [one = '', other = ''] = pair;
      const box = await inkOf('\u{10FFFD}');
      const [first, second] = [await inkOf(one), await inkOf(other)];
      expect(total(first)).toBeGreaterThan(0);
      expect(first).not.toEqual(second);
      expect(first).not.toEqual(box);
      expect(second).not.toEqual(box);
    },
  );

  it.each(['深', '김', 'ש', 'ط'])('%s is darker in bold', async (letter) => {
    expect(total(await inkOf(letter, 700))).toBeGreaterThan(1.15 * total(await inkOf(letter, 400)));
  });

  it('of Arabic are joined: a word is narrower than its letters apart', async () => {
    const pen = createCanvas(size.width, size.height).getContext('2d');
    await openFaces(pen, GlobalFonts, 'سليم');
    setFace(pen, 40, 400);
    expect(pen.measureText('سليم').width).toBeLessThan(0.85 * pen.measureText([...'سليم'].join('\u200C')).width);
  });
});

describe('the plate of a remark', () => {
  /** Left and right end of the light ink below the heading, in pixels of the plate. */
  async function inkEnds(
    words: string,
  ): Promise<{ readonly left: number; readonly right: number; readonly width: number }> {
    const painter = await openPainter({ width: 640, height: 480 }, { red: 0.2126, blue: 0.0722 }, words);
    const layer = paintPlate(painter, [noteAt(0, { heading: 'adjust · A long heading of a remark', words })], []);
    const { data, width, height } = layer?.luma ?? { data: new Uint8Array(), width: 0, height: 0 };
    let [left, right] = [width, 0];
    for (let row = Math.ceil(height * 0.6); row < height - 4; row += 1) {
      for (let column = 0; column < width; column += 1) {
        if ((data[row * width + column] ?? 0) < 150) continue;
        [left, right] = [Math.min(left, column), Math.max(right, column)];
      }
    }
    return { left, right, width };
  }

  it('has words from right to left at its right, others at its left', async () => {
    const hebrew = await inkEnds('רד לאט');
    expect(hebrew.width - hebrew.right).toBeLessThan(20);
    expect(hebrew.left).toBeGreaterThan(hebrew.width / 2);
    const english = await inkEnds('Slower');
    expect(english.left).toBeLessThan(20);
    expect(english.right).toBeLessThan(english.width / 2);
  });
});
