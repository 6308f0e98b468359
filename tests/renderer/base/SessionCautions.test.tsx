// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import type { Review } from '../../../engine/review/review.ts';
import { SessionCautions } from '../../../renderer/base/SessionCautions.tsx';
import { reviewWithFlagIds } from '../../../renderer/state/reviewState.ts';
import { deskLanguage } from '../../../renderer/words/deskLanguage.ts';
import { deskVoice } from '../../../renderer/words/deskVoice.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { reviewAnswer } from '../harness/reviewAnswer.ts';
import { startAfresh } from '../harness/startAfresh.ts';

const plain = reviewWithFlagIds(reviewAnswer([]).review);
const minor: Review = { ...plain, trainee: { ...plain.trainee, minor: true } };

function shownFor(review: Review): HTMLElement | null {
  fakeRackside({});
  render(<SessionCautions review={review} catalogue={shipped} shown="folded" />);
  return screen.queryByRole('complementary');
}

const textsOf = (applies: string) => shipped.cautions.filter((one) => one.applies === applies).map(({ text }) => text);

describe('the cautions above a session', () => {
  afterEach(() => {
    startAfresh(deskLanguage);
    startAfresh(deskVoice);
  });

  it('are none where nothing calls for them', () => {
    expect(shownFor(plain)).toBeNull();
  });

  it('are those for young lifters where the trainee is a minor', () => {
    const notice = within(shownFor(minor) ?? document.body);
    expect(notice.getByRole('heading', { name: 'Under 18' })).toBeTruthy();
    for (const text of textsOf('minor')) expect(notice.getByText(text)).toBeTruthy();
  });

  it('say so in the first person in a self-review, in either language', () => {
    deskVoice.getState().choose('self');
    expect(within(shownFor(minor) ?? document.body).getByRole('heading', { name: 'I am under 18' })).toBeTruthy();
    deskLanguage.getState().choose('de');
    render(<SessionCautions review={minor} catalogue={shipped} shown="folded" />);
    expect(screen.getByRole('heading', { name: 'Ich bin unter 18' })).toBeTruthy();
  });

  it('begin with pain, with the words in which it was noted', () => {
    const painful = { ...minor, session: { ...minor.session, painNote: 'left knee, 4 of 10' } };
    const notice = within(shownFor(painful) ?? document.body);
    expect(notice.getAllByRole('heading').map(({ textContent }) => textContent)).toEqual([
      'Pain noted: “left knee, 4 of 10”',
      'Under 18',
    ]);
    for (const text of textsOf('pain')) expect(notice.getByText(text)).toBeTruthy();
  });
});
