// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import type { NameDoubt } from '../../../electron/contract/names.ts';
import { statusState } from '../../../renderer/bridge/statusState.ts';
import { HandoverForm } from '../../../renderer/handover/HandoverForm.tsx';
import { deskState } from '../../../renderer/state/deskState.ts';
import { handoverState } from '../../../renderer/state/handoverState.ts';
import { handoverChoices } from '../../../renderer/state/preferences.ts';
import { screenState } from '../../../renderer/state/screenState.ts';
import { changed, fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';
import { summaryOf, traineeOf } from '../harness/summaries.ts';

const clip = { id: 'c1', name: 'set 1.mp4' };
const note: NameDoubt = { kind: 'note', place: 'note/f1', before: '', word: 'Mark', after: ' the floor', clip };
const cue: NameDoubt = { kind: 'cue', place: 'cue/f1', before: 'You ', word: 'will', after: ' see', clip };
const voice: NameDoubt = { kind: 'voice', place: 'voice/c1', before: '', word: 'a'.repeat(64), after: '', clip };

/** A page on which some places wait until each was decided. */
function held(doubts: readonly NameDoubt[]) {
  let left = [...doubts];
  deskState.setState({ trainees: [traineeOf({ names: 'none' })] });
  return fakeRackside(
    {
      'names.doubts': () => (left.length === 0 ? [] : [{ sessionId: 's1', doubts: left }]),
      'names.decide': ({ places }) => {
        left = left.filter(({ place }) => !places.some((one) => one.place === place));
        return changed;
      },
      'history.undo': () => {
        left = [...doubts];
        return changed;
      },
      'position.set': () => changed,
    },
    { 'handover.deliver': () => ({ jobIds: null }) },
  );
}

describe('names to check before a handover', () => {
  beforeEach(() => {
    startAfresh(deskState);
    startAfresh(handoverChoices);
    startAfresh(handoverState);
    startAfresh(statusState);
    startAfresh(screenState);
  });

  it('hold the handover, and lead the person to them', async () => {
    const user = userEvent.setup();
    const page = held([note, cue]);
    render(<HandoverForm chosen={[summaryOf()]} />);
    await user.click(await screen.findByRole('button', { name: 'Check 2 places first' }));
    expect(page.askedFor('handover.deliver')).toEqual([]);
    expect(document.activeElement).toBe(screen.getByRole('heading', { name: /^Names to check/ }));
    expect(screen.getByText('Mark', { selector: 'mark' }).parentElement?.textContent).toBe('Mark the floor');
  });

  it('are decided one by one by keys, and then it is handed over', async () => {
    const user = userEvent.setup();
    const page = held([note, cue]);
    render(<HandoverForm chosen={[summaryOf()]} />);
    (await screen.findByRole('button', { name: 'Not a name: “Mark”, Comment on a flag · set 1.mp4' })).focus();
    await user.keyboard('{Enter}');
    (await screen.findByRole('button', { name: 'Check 1 place first' })).focus();
    await user.click(screen.getByRole('button', { name: 'Hide it: “will”, Cue · set 1.mp4' }));
    await user.click(await screen.findByRole('button', { name: 'Hand over 1 session…' }));
    expect(page.askedFor('handover.deliver')).toHaveLength(1);
    expect(page.askedFor('names.decide')).toMatchObject([
      { sessionId: 's1', is: 'noName', places: [{ place: 'note/f1', word: 'Mark' }] },
      { sessionId: 's1', is: 'name', places: [{ place: 'cue/f1', word: 'will' }] },
    ]);
  });

  it('are decided all at once, which can be undone; what was said over a clip is not among them', async () => {
    const user = userEvent.setup();
    const page = held([note, cue, voice]);
    render(<HandoverForm chosen={[summaryOf()]} />);
    await user.click(await screen.findByRole('button', { name: /^None is a name: / }));
    expect(await screen.findByRole('button', { name: 'Check 1 place first' })).toBeDefined();
    const list = screen.getByRole('list', { name: /^Names to check: / });
    expect(within(list).getAllByRole('listitem')).toHaveLength(1);
    expect(within(list).getByRole('button', { name: 'Name not said: set 1.mp4' })).toBeDefined();
    statusState.getState().offer?.run();
    expect(await screen.findByRole('button', { name: 'Check 3 places first' })).toBeDefined();
    expect(page.askedFor('history.undo')).toEqual([{ sessionId: 's1' }]);
  });

  it('lead to the clip whose words are to be edited', async () => {
    const user = userEvent.setup();
    const page = held([note]);
    render(<HandoverForm chosen={[summaryOf()]} />);
    await user.click(await screen.findByRole('button', { name: 'Edit: Comment on a flag · set 1.mp4' }));
    expect(page.askedFor('position.set')).toEqual([{ sessionId: 's1', clipId: 'c1', frame: 0 }]);
    expect(screenState.getState().screen).toEqual({ kind: 'review', sessionId: 's1' });
  });

  it('are none where every name is shown in full', async () => {
    const page = held([note]);
    deskState.setState({ trainees: [traineeOf({ names: 'full' })] });
    render(<HandoverForm chosen={[summaryOf()]} />);
    await screen.findByRole('button', { name: 'Hand over 1 session…' });
    expect(page.askedFor('names.doubts')).toEqual([]);
  });
});
