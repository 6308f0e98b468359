// @vitest-environment happy-dom
import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { statusState } from '../../../renderer/bridge/statusState.ts';
import { HandoverForm } from '../../../renderer/handover/HandoverForm.tsx';
import { deskState } from '../../../renderer/state/deskState.ts';
import { handoverState } from '../../../renderer/state/handoverState.ts';
import { handoverChoices } from '../../../renderer/state/preferences.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';
import { summaryOf, traineeOf } from '../harness/summaries.ts';

const delivering = (jobIds: string[] | null) => fakeRackside({}, { 'handover.deliver': () => ({ jobIds }) });

describe('the handover form', () => {
  beforeEach(() => {
    vi.setSystemTime(new Date(2026, 2, 4, 12));
    startAfresh(deskState);
    startAfresh(handoverChoices);
    startAfresh(handoverState);
    startAfresh(statusState);
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('asks for a session first', () => {
    delivering(['j1']);
    render(<HandoverForm chosen={[]} />);
    expect(screen.getByRole('button', { name: 'Choose a session' }).hasAttribute('disabled')).toBe(true);
  });

  it('hands the chosen sessions over as usual, to be filmed again in a week', async () => {
    const user = userEvent.setup();
    const page = delivering(['j1', 'j2']);
    render(<HandoverForm chosen={[summaryOf(), summaryOf({ id: 's2' })]} />);
    await user.click(screen.getByRole('button', { name: 'Hand over 2 sessions…' }));
    expect(page.asked).toEqual([
      {
        name: 'handover.deliver',
        params: {
          sessionIds: ['s1', 's2'],
          options: {
            atNotes: { do: 'freeze', lastsS: 1.5 },
            clips: true,
            covering: { boxes: [], head: false, look: 'filled' },
            loops: true,
            narrated: false,
            nextFilming: '2026-03-11',
            paper: 'a4',
            sheet: 'full',
            sound: 'kept',
            zip: false,
          },
        },
      },
    ]);
    expect(handoverState.getState().started).toEqual(['j1', 'j2']);
  });

  it('is filled in by keys alone: slow at the notes, by initials, on no day, as a zip', async () => {
    const user = userEvent.setup();
    const page = delivering(null);
    render(<HandoverForm chosen={[summaryOf()]} />);
    await user.selectOptions(screen.getByRole('combobox', { name: 'At each note' }), 'slow down');
    const speed = screen.getByRole('textbox', { name: 'share of the speed to slow down to' });
    await user.clear(speed);
    await user.type(speed, '0,25{Enter}');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Name shown' }), 'Initials');
    await user.clear(screen.getByLabelText('Film again on'));
    screen.getByRole('checkbox', { name: 'One zip instead of a folder' }).focus();
    await user.keyboard(' ');
    screen.getByRole('button', { name: 'Hand over 1 session…' }).focus();
    await user.keyboard('{Enter}');
    expect(page.askedFor('handover.deliver')).toMatchObject([
      { options: { atNotes: { do: 'slow', speed: 0.25 }, names: 'initials', zip: true } },
    ]);
    expect(page.askedFor('handover.deliver')).not.toMatchObject([{ options: { nextFilming: expect.anything() } }]);
    expect(handoverState.getState().started).toEqual([]);
  });

  it('keeps a number that it does not accept out', async () => {
    const user = userEvent.setup();
    delivering(null);
    render(<HandoverForm chosen={[summaryOf()]} />);
    const seconds = screen.getByRole('textbox', { name: 'seconds to freeze for' });
    await user.clear(seconds);
    await user.type(seconds, '90{Enter}');
    expect(seconds).toHaveProperty('value', '1.5');
    expect(handoverChoices.getState().choices.atNotes).toEqual({ do: 'freeze', lastsS: 1.5 });
  });

  it('asks for faces to be covered where a chosen trainee is a minor, whatever else goes along', async () => {
    const user = userEvent.setup();
    delivering(null);
    deskState.setState({
      trainees: [traineeOf({ minor: true }), traineeOf({ id: 't2', name: 'Jo Berg', minor: true })],
    });
    render(<HandoverForm chosen={[summaryOf()]} />);
    expect(screen.getByRole('note').textContent).toMatch(/^Mira Holt: Under 18:/);
    const cover = screen.getByRole('checkbox', { name: /Cover the lifter’s head/ });
    await user.click(cover);
    expect(screen.queryByRole('note')).toBeNull();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Cover with' }), 'a mosaic');
    expect(handoverChoices.getState().choices.covering).toEqual({ boxes: [], head: true, look: 'mosaic' });
  });

  it('says in the status line why nothing was handed over, and can be asked again', async () => {
    const user = userEvent.setup();
    fakeRackside({});
    render(<HandoverForm chosen={[summaryOf()]} />);
    await user.click(screen.getByRole('button', { name: 'Hand over 1 session…' }));
    expect(statusState.getState().notice).toBe('No answer to handover.deliver in this test.');
    expect(screen.getByRole('button', { name: 'Hand over 1 session…' }).hasAttribute('disabled')).toBe(false);
  });
});
