import { create } from 'zustand';
import { keepInProfile, readProfile } from '../base/profile.ts';
import type { CommandFace } from '../commands/command.ts';
import { keySheet, palette } from '../commands/everywhereCommands.ts';
import { keyWords } from '../commands/keys.ts';
import { keysState } from '../commands/keysState.ts';
import { frameBack, frameOn, play, playBackwards } from '../player/playingCommands.ts';
import { reviewState } from '../state/reviewState.ts';
import { sayHints } from '../words/sayHints.ts';
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
      sayHints('step', {
        back: key(frameBack),
        on: key(frameOn),
        play: key(play),
        backwards: key(playBackwards),
      }),
  },
  {
    id: 'mark',
    words: (key: KeyOf) =>
      sayHints('mark', {
        ...{ left: key(cellLeft), up: key(cellUp), down: key(cellDown), right: key(cellRight) },
        ...{ prefer: key(prefer), adjust: key(adjust), correct: key(correct), stop: key(stop) },
        ...{ keep: key(keep), fine: key(fine) },
      }),
  },
  {
    id: 'rest',
    words: (key: KeyOf) => sayHints('rest', { rest: key(fineRest), next: key(nextToJudge) }),
  },
  {
    id: 'measure',
    words: (key: KeyOf) => sayHints('measure', { measure: key(measure), all: key(measureAll), panel: key(panel) }),
  },
  {
    id: 'find',
    words: (key: KeyOf) => sayHints('find', { palette: key(palette), sheet: key(keySheet) }),
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

/** The first hint that was not dismissed yet; none in a session that can't be changed. */
export function ReviewHints() {
  const readOnly = reviewState((state) => state.data?.readOnly !== false);
  const done = hintsDone((state) => state.done);
  const chosen = keysState((state) => state.chosen);
  const left = hints.filter(({ id }) => !done.includes(id));
  const [hint] = left;
  if (hint === undefined || readOnly) return null;
  return (
    <section className="hint-card" aria-label={sayHints('hint')}>
      <p>{hint.words((command) => keyWords(chosen, command))}</p>
      <button type="button" className="quiet-button" onClick={() => dismiss([hint.id])}>
        {sayHints('next')}
      </button>
      <button type="button" className="quiet-button" onClick={() => dismiss(left.map(({ id }) => id))}>
        {sayHints('noMore')}
      </button>
    </section>
  );
}
