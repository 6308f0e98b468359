import { create } from 'zustand';
import { keepInProfile, readProfile } from '../base/profile.ts';
import type { CommandFace } from '../commands/command.ts';
import { keySheet, palette } from '../commands/everywhereCommands.ts';
import { keyWords } from '../commands/keys.ts';
import { keysState } from '../commands/keysState.ts';
import { frameBack, frameOn, play, playBackwards } from '../player/playingCommands.ts';
import { fine, severityCommands } from './commands/judging.ts';
import { fineRest, nextToJudge } from './commands/leftToJudge.ts';
import { measure, measureAll, panel } from './commands/measuring.ts';
import { cellDown, cellLeft, cellRight, cellUp } from './commands/moving.ts';

type KeyOf = (command: CommandFace) => string;
const { keep, prefer, adjust, correct, stop } = severityCommands;

/** Hints in the order they are shown, one at a time; they name the keys as this person has them. */
const hints = [
  {
    id: 'step',
    words: (key: KeyOf) =>
      `${key(frameBack)} and ${key(frameOn)} step frame by frame; ${key(play)} plays, ${key(playBackwards)} plays backwards.`,
  },
  {
    id: 'mark',
    words: (key: KeyOf) =>
      `${key(cellLeft)} ${key(cellUp)} ${key(cellDown)} ${key(cellRight)} move over the card. ${key(prefer)}, ${key(adjust)}, ${key(correct)} and ${key(stop)} mark what is wrong, ${key(keep)} praises, ${key(fine)} says fine.`,
  },
  {
    id: 'rest',
    words: (key: KeyOf) =>
      `${key(fineRest)} says that all you have not marked is fine; ${key(nextToJudge)} goes to the next cell not looked at.`,
  },
  {
    id: 'measure',
    words: (key: KeyOf) =>
      `${key(measure)} measures this clip, ${key(measureAll)} all of the session; ${key(panel)} shows what was measured and what it proposes.`,
  },
  {
    id: 'find',
    words: (key: KeyOf) =>
      `${key(palette)} finds any command by its name; ${key(keySheet)} shows all keys and lets you change them.`,
  },
] as const;

const storageKey = 'rackside.hints';

/** The hints that a person has dismissed; kept in the window's profile. */
const hintsDone = create<{ readonly done: readonly string[] }>()(() => ({
  done: (readProfile(storageKey) ?? '').split(',').filter((id) => id !== ''),
}));

function dismiss(ids: readonly string[]): void {
  const done = [...hintsDone.getState().done, ...ids];
  keepInProfile(storageKey, done.join(','));
  hintsDone.setState({ done });
}

/** The first hint that was not dismissed yet. */
export function HintCard() {
  const done = hintsDone((state) => state.done);
  const chosen = keysState((state) => state.chosen);
  const left = hints.filter(({ id }) => !done.includes(id));
  const [hint] = left;
  if (hint === undefined) return null;
  return (
    <aside className="hint-card" aria-label="Hint">
      <p>{hint.words((command) => keyWords(chosen, command))}</p>
      <button type="button" className="quiet-button" onClick={() => dismiss([hint.id])}>
        Next hint
      </button>
      <button type="button" className="quiet-button" onClick={() => dismiss(left.map(({ id }) => id))}>
        No more hints
      </button>
    </aside>
  );
}
