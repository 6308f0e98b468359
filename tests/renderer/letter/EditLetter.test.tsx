// @vitest-environment happy-dom
import { act, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { statusState } from '../../../renderer/bridge/statusState.ts';
import { runCommand } from '../../../renderer/commands/command.ts';
import { EditLetter } from '../../../renderer/letter/EditLetter.tsx';
import { markSent } from '../../../renderer/letter/letterCommands.ts';
import { letterContext } from '../../../renderer/letter/letterContext.ts';
import { letterDesk, resetLetterDesk, showView } from '../../../renderer/letter/letterDesk.ts';
import {
  editLetter,
  leaveOutParagraph,
  paragraphDown,
  paragraphUp,
} from '../../../renderer/letter/paragraphCommands.ts';
import { type Letter, letterState } from '../../../renderer/state/letterState.ts';
import { settingsState } from '../../../renderer/state/settingsState.ts';
import { usualSettings } from '../../electron/contract/usualSettings.ts';
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
  part: change.id,
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

beforeEach(() => {
  resetLetterDesk();
  letterState.setState({ sessionId: 's1', letter: letter() });
});

describe('the letter editor', () => {
  it('shows headings as headings, what is fixed as fixed, and every other paragraph with a button to edit it', () => {
    fakeRackside({});
    render(<EditLetter sessionId="s1" letter={letter()} />);
    expect(screen.getByRole('heading', { name: 'Your squat' })).toBeTruthy();
    expect(screen.getByRole('img', { name: 'Can’t be edited' })).toBeTruthy();
    expect(
      screen.getAllByRole('button', { name: /^Edit: / }).map((button) => button.getAttribute('aria-label')),
    ).toEqual(['Edit: Hello Mira,', 'Edit: Sit a little lower.']);
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

  it('leaves a paragraph out that was emptied, once typing has ended and not before', async () => {
    const user = userEvent.setup();
    const page = fakeRackside({ 'letters.leaveOut': () => changed, 'letters.get': () => letter() });
    render(<EditLetter sessionId="s1" letter={letter()} />);
    await user.click(screen.getByRole('button', { name: 'Edit: Sit a little lower.' }));
    await user.clear(screen.getByRole('textbox'));
    await user.type(screen.getByRole('textbox'), '   ');
    expect(page.askedFor('letters.leaveOut')).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Done' }));
    expect(page.askedFor('letters.edit')).toEqual([]);
    expect(page.askedFor('letters.leaveOut')).toEqual([{ sessionId: 's1', paragraph: 'depth' }]);
  });

  it('lists what is left out, to be brought back, and the coach’s own to be deleted too', async () => {
    const user = userEvent.setup();
    const page = fakeRackside({ 'letters.bringBack': () => changed, 'letters.remove': () => changed });
    const leftOut = [
      paragraph({ id: 'pace', words: 'Slower.' }),
      paragraph({ id: 'own-1', words: 'Mine.', writer: 'coach' }),
    ];
    render(<EditLetter sessionId="s1" letter={letter({ leftOut })} />);
    expect(screen.getByRole('heading', { name: 'Left out' })).toBeTruthy();
    expect(screen.queryByRole('button', { name: 'Delete: Slower.' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Bring back: Slower.' }));
    await user.click(screen.getByRole('button', { name: 'Delete: Mine.' }));
    expect(page.asked).toEqual([
      { name: 'letters.bringBack', params: { sessionId: 's1', paragraph: 'pace' } },
      { name: 'letters.remove', params: { sessionId: 's1', paragraph: 'own-1' } },
    ]);
  });

  it('goes from paragraph to paragraph by the arrows', async () => {
    const user = userEvent.setup();
    fakeRackside({});
    render(<EditLetter sessionId="s1" letter={letter()} />);
    act(() => screen.getByRole('button', { name: 'Edit: Hello Mira,' }).focus());
    await user.keyboard('{ArrowDown}');
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Edit: Sit a little lower.' }));
    expect(letterDesk.getState().at).toBe('depth');
  });

  it('adds a paragraph below, open to be typed', async () => {
    const user = userEvent.setup();
    const added = paragraph({ id: 'own-1', words: '', writer: 'coach' });
    const page = fakeRackside({ 'letters.add': () => ({ paragraph: 'own-1' }), 'letters.get': () => letter() });
    const { rerender } = render(<EditLetter sessionId="s1" letter={letter()} />);
    await user.click(screen.getByRole('button', { name: 'Add a paragraph below: Hello Mira,' }));
    expect(page.askedFor('letters.add')).toEqual([{ sessionId: 's1', after: 'greeting' }]);
    rerender(<EditLetter sessionId="s1" letter={letter({ paragraphs: [...letter().paragraphs, added] })} />);
    expect(document.activeElement).toBe(screen.getByRole('textbox'));
  });

  it('sets a phrase in at the cursor by its key, its places filled from the session', async () => {
    const user = userEvent.setup();
    const page = fakeRackside({ 'letters.edit': () => changed, 'letters.get': () => letter() });
    const phrase = { id: 'p', name: 'Film', text: ' {name}, film the {exercise}!', key: '2' as const };
    settingsState.setState({ settings: { ...usualSettings, phrases: [phrase] } });
    render(<EditLetter sessionId="s1" letter={letter()} />);
    await user.click(screen.getByRole('button', { name: 'Edit: Hello Mira,' }));
    const field = screen.getByRole<HTMLTextAreaElement>('textbox');
    field.setSelectionRange(5, 5);
    await user.keyboard('{Control>}[Digit2]{/Control}');
    expect(field.value).toBe('Hello Mira, film the back squat! Mira,');
    expect(field.selectionStart).toBe('Hello Mira, film the back squat!'.length);
    await user.click(screen.getByRole('button', { name: 'Done' }));
    expect(page.askedFor('letters.edit').at(-1)).toMatchObject({ words: 'Hello Mira, film the back squat! Mira,' });
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

describe('the commands of a paragraph', () => {
  const context = letterContext('s1', { current: async () => {} });
  const lines = [
    { ...paragraph({ id: 'pain', words: 'Pain' }), kind: 'heading' as const },
    { ...paragraph({ id: 'pain-1', words: 'Knee.' }), kind: 'fixed' as const, part: 'pain' },
    paragraph({ id: 'one', words: 'One.' }),
    { ...paragraph({ id: 'keep', words: 'Keep' }), kind: 'heading' as const },
    paragraph({ id: 'two', words: 'Two.' }),
    { ...paragraph({ id: 'basis', words: 'The end.' }), kind: 'fixed' as const },
  ];

  it('move it over headings, never above pain or below the last line, and say why', async () => {
    const page = fakeRackside({ 'letters.move': () => changed, 'letters.leaveOut': () => changed });
    letterState.setState({ sessionId: 's1', letter: letter({ paragraphs: lines }) });
    showView({ kind: 'editing' });
    letterDesk.setState({ at: 'one' });
    runCommand(paragraphUp, context);
    expect(statusState.getState().notice).toMatch(/^This paragraph can’t go any higher/);
    runCommand(paragraphDown, context);
    letterDesk.setState({ at: 'two' });
    runCommand(paragraphUp, context);
    runCommand(paragraphDown, context);
    expect(statusState.getState().notice).toMatch(/^This paragraph can’t go any lower/);
    runCommand(leaveOutParagraph, context);
    await vi.waitFor(() => expect(page.askedFor('letters.leaveOut')).toEqual([{ sessionId: 's1', paragraph: 'two' }]));
    expect(page.askedFor('letters.move')).toEqual([
      { sessionId: 's1', paragraph: 'one', after: 'keep' },
      { sessionId: 's1', paragraph: 'two', after: 'one' },
    ]);
    expect(letterDesk.getState().focus).toBe('one');
  });

  it('are refused while the letter is not edited', () => {
    fakeRackside({});
    letterDesk.setState({ at: 'greeting' });
    runCommand(leaveOutParagraph, context);
    expect(statusState.getState().notice).toMatch(/^Start editing the letter first/);
  });
});

describe('editing', () => {
  it('can be asked for before the letter has been read', () => {
    fakeRackside({});
    letterState.setState({ sessionId: null, letter: null });
    runCommand(editLetter, letterContext('s1', { current: async () => {} }));
    expect(letterDesk.getState().view).toEqual({ kind: 'editing' });
  });
});

describe('marking as sent', () => {
  it('asks first where nothing has changed since the version before', async () => {
    const page = fakeRackside({});
    letterState.setState({ sessionId: 's1', letter: letter({ sentAlready: true }) });
    await markSent.run(letterContext('s1', { current: async () => {} }), 'pressed');
    expect(letterDesk.getState().asking).toBe('sendAgain');
    expect(page.askedFor('letters.send')).toEqual([]);
  });
});
