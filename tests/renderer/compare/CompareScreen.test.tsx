// @vitest-environment happy-dom
import { render, screen } from '@testing-library/react';
import { expect, it, onTestFinished } from 'vitest';
import { CompareScreen } from '../../../renderer/compare/CompareScreen.tsx';
import { deskLanguage } from '../../../renderer/words/deskLanguage.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { reviewAnswer } from '../harness/reviewAnswer.ts';
import { squatClip, squatEntry } from '../harness/reviewBench.ts';

/** The screen for a clip without reps, with one more clip of the exercise. */
function showScreen(): void {
  fakeRackside({
    'review.get': () => reviewAnswer([squatEntry({ clips: [squatClip({ reps: [] })] })]),
    'clips.alike': () => [
      { clipId: 'c1', sessionId: 's1', name: 'Set 1', date: '2026-03-04', exercise: 'back-squat' },
      { clipId: 'c0', sessionId: 's0', name: 'Set 1', date: '2026-02-25', exercise: 'back-squat' },
    ],
  });
  render(<CompareScreen sessionId="s1" clipId="c1" rep={null} />);
}

it('says what is missing, and names the clips to compare with by day', async () => {
  showScreen();
  expect(screen.getByRole('heading', { name: 'Compare' })).toBeTruthy();
  expect(await screen.findByText(/^Mark the reps of this clip first/)).toBeTruthy();
  expect(await screen.findByRole('option', { name: '4 Mar 2026, Set 1 (this clip)' })).toBeTruthy();
  expect(screen.getByRole('button', { name: 'Next frame' })).toBeTruthy();
});

it('speaks German on a German desk', async () => {
  deskLanguage.getState().choose('de');
  onTestFinished(() => deskLanguage.getState().choose('en'));
  showScreen();
  expect(screen.getByRole('heading', { name: 'Vergleich' })).toBeTruthy();
  expect(await screen.findByText(/^Markier zuerst die Wiederholungen dieses Clips/)).toBeTruthy();
  expect(await screen.findByRole('option', { name: '4. März 2026, Set 1 (dieser Clip)' })).toBeTruthy();
  expect(screen.getByRole('option', { name: '0,25 ×' })).toBeTruthy();
});
