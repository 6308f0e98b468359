// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, it } from 'vitest';
import { FineTick, Strokes } from '../../../renderer/base/Strokes.tsx';
import { deskLanguage } from '../../../renderer/words/deskLanguage.ts';

afterEach(() => {
  cleanup();
  deskLanguage.getState().choose('en');
});

/** The shapes that a mark is drawn of. */
const shapesOf = (mark: Parameters<typeof Strokes>[0]): number =>
  render(<Strokes {...mark} />).container.querySelectorAll('path').length;

it('draws one, two and three strokes, and one plate for a stop', () => {
  expect([
    shapesOf({ severity: 'prefer' }),
    shapesOf({ severity: 'adjust' }),
    shapesOf({ severity: 'correct' }),
    shapesOf({ severity: 'stop' }),
  ]).toEqual([1, 2, 3, 1]);
});

it('tells a screen reader the word in the language of the desk', () => {
  deskLanguage.getState().choose('de');
  render(
    <>
      <Strokes severity="adjust" />
      <FineTick />
    </>,
  );
  expect(screen.getByText('anpassen')).toBeDefined();
  expect(screen.getByText('passt')).toBeDefined();
});
