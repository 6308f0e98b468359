// @vitest-environment happy-dom
import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { EditLetter } from '../../../renderer/letter/EditLetter.tsx';
import type { Letter } from '../../../renderer/state/letterState.ts';
import { changed, fakeRackside } from '../harness/fakeRackside.ts';

const paragraph = (
  change: Partial<Letter['paragraphs'][number]> & { readonly id: string; readonly words: string },
) => ({
  kind: 'paragraph' as const,
  label: '',
  own: change.words,
  edited: false,
  stale: false,
  writer: 'plan' as const,
  exercise: 'back squat',
  ...change,
});

const letter = (change: Partial<Letter> = {}): Letter => ({
  style: { length: 'full', tone: 'plain', language: 'en' },
  paragraphs: [
    { ...paragraph({ id: 'h', words: 'Your squat' }), kind: 'heading' },
    paragraph({ id: 'greeting', words: 'Hello Mira,' }),
    paragraph({ id: 'depth', words: 'Sit a little lower.', label: 'First:' }),
    { ...paragraph({ id: 'basis', words: 'Coaching opinion from video; not medical advice.' }), kind: 'fixed' },
  ],
  waiting: [],
  leftOut: [],
  name: 'Mira',
  sent: [],
  sentAlready: false,
  ...change,
});

describe('the letter editor', () => {
  it('shows headings as headings, what is fixed as fixed, and every other paragraph with a button to edit it', () => {
    fakeRackside({});
    render(<EditLetter sessionId="s1" letter={letter()} />);
    expect(screen.getByRole('heading', { name: 'Your squat' })).toBeTruthy();
    expect(screen.getByRole('img', { name: 'Can’t be edited' })).toBeTruthy();
    expect(screen.getAllByRole('button').map((button) => button.getAttribute('aria-label'))).toEqual([
      'Edit: Hello Mira,',
      'Edit: Sit a little lower.',
    ]);
  });

  it('shows cautions and the closing line as they are, with nothing to edit them by', () => {
    fakeRackside({});
    const words = 'Coaching opinion from video; not medical advice.';
    render(
      <EditLetter
        sessionId="s1"
        letter={letter({ paragraphs: [{ ...paragraph({ id: 'basis', words }), kind: 'fixed' }] })}
      />,
    );
    expect(screen.getByText(words)).toBeTruthy();
    expect(screen.queryByRole('button')).toBeNull();
  });

  it('saves what is typed when Ctrl+Enter closes the paragraph, and gives the focus back to its button', async () => {
    const user = userEvent.setup();
    const page = fakeRackside({ 'letters.edit': () => changed, 'letters.get': () => letter() });
    render(<EditLetter sessionId="s1" letter={letter()} />);
    await user.click(screen.getByRole('button', { name: 'Edit: Hello Mira,' }));
    const field = screen.getByRole('textbox', { name: 'Paragraph in your own words' });
    expect(document.activeElement).toBe(field);
    await user.clear(field);
    await user.type(field, 'Dear Mira,');
    await user.keyboard('{Control>}{Enter}{/Control}');
    expect(page.askedFor('letters.edit')).toEqual([{ sessionId: 's1', paragraph: 'greeting', words: 'Dear Mira,' }]);
    expect(screen.queryByRole('textbox')).toBeNull();
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Edit: Hello Mira,' }));
  });

  it('never saves a paragraph without words', async () => {
    const user = userEvent.setup();
    const page = fakeRackside({ 'letters.edit': () => changed, 'letters.get': () => letter() });
    render(<EditLetter sessionId="s1" letter={letter()} />);
    await user.click(screen.getByRole('button', { name: 'Edit: Sit a little lower.' }));
    await user.clear(screen.getByRole('textbox'));
    await user.type(screen.getByRole('textbox'), '   ');
    await user.click(screen.getByRole('button', { name: 'Done' }));
    expect(page.askedFor('letters.edit')).toEqual([]);
    expect(screen.getByText('Sit a little lower.')).toBeTruthy();
  });

  it('says what a stale paragraph would say by itself, and takes an edit back by asking for no words', async () => {
    const user = userEvent.setup();
    const page = fakeRackside({ 'letters.edit': () => changed });
    const edited = paragraph({
      id: 'depth',
      words: 'Lower, Mira.',
      own: 'Depth is good now.',
      edited: true,
      stale: true,
    });
    render(<EditLetter sessionId="s1" letter={letter({ paragraphs: [edited] })} />);
    expect(screen.getByRole('note').textContent).toContain('“Depth is good now.”');
    await user.click(screen.getByRole('button', { name: 'Revert' }));
    expect(page.asked).toEqual([
      { name: 'letters.edit', params: { sessionId: 's1', paragraph: 'depth', words: null } },
    ]);
  });

  it('lists edits that wait for their paragraph, each to be taken back', async () => {
    const user = userEvent.setup();
    const page = fakeRackside({ 'letters.edit': () => changed });
    render(
      <EditLetter sessionId="s1" letter={letter({ paragraphs: [], waiting: [{ id: 'pace', words: 'Slower.' }] })} />,
    );
    expect(screen.getByRole('heading', { name: 'Edits on hold' })).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Revert' }));
    expect(page.askedFor('letters.edit')).toEqual([{ sessionId: 's1', paragraph: 'pace', words: null }]);
  });
});
