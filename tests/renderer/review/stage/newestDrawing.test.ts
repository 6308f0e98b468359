import { expect, it } from 'vitest';
import { createNewestDrawing } from '../../../../renderer/review/stage/newestDrawing.ts';

/** A canvas whose drawings end when the test says so. */
function bench() {
  const begun: number[] = [];
  const shown: (number | null)[] = [];
  let end = (): void => {};
  const drawing = createNewestDrawing({
    draw: (frame) => {
      begun.push(frame);
      return new Promise<void>((resolve) => {
        end = resolve;
      });
    },
    onShown: (frame) => shown.push(frame),
  });
  const ends = async (): Promise<void> => {
    end();
    await new Promise((resolve) => setImmediate(resolve));
  };
  return { drawing, begun, shown, ends };
}

it('draws one frame at a time, and of those wanted meanwhile the last alone', async () => {
  const { drawing, begun, shown, ends } = bench();
  for (const frame of [4, 5, 6, 7]) drawing.want(frame);
  await ends();
  await ends();
  expect(begun).toEqual([4, 7]);
  expect(shown).toEqual([4, 7]);
});

it('takes the old picture away at once where there is nothing to show, as in the first rep', async () => {
  const { drawing, shown, ends } = bench();
  drawing.want(4);
  await ends();
  drawing.want(null);
  expect(shown).toEqual([4, null]);
});

it('shows no picture that comes after nothing was wanted any more', async () => {
  const { drawing, shown, ends } = bench();
  drawing.want(4);
  drawing.want(null);
  await ends();
  expect(shown.at(-1) ?? null).toBeNull();
});

it('draws the same frame again once it was taken away', async () => {
  const { drawing, begun, shown, ends } = bench();
  drawing.want(4);
  await ends();
  drawing.want(null);
  drawing.want(4);
  await ends();
  expect(begun).toEqual([4, 4]);
  expect(shown).toEqual([4, null, 4]);
});

it('tells nothing any more once it is done with', async () => {
  const { drawing, shown, ends } = bench();
  drawing.want(4);
  drawing.dispose();
  await ends();
  expect(shown).toEqual([]);
});
