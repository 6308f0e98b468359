import { create } from 'zustand';
import { later } from '../base/later.ts';

type SpokenState = {
  /** What a screen reader says next, though nothing on screen asks for the eye. */
  readonly spoken: string;
};

/** What is told to people who listen to the screen, and is seen by everybody else. */
export const spokenState = create<SpokenState>()(() => ({ spoken: '' }));

/** Keys that are held down, and films that are stepped through, say where they came to, not what they passed. */
const restMs = 400;

const waiting = new Map<string, string>();
let callOff = (): void => {};

/**
 * Says a sentence once nothing further was asked to be said for a moment. A later sentence about the same thing takes its place.
 *
 * @param about what it is about, such as "frame"
 */
export function speakSoon(about: string, sentence: string): void {
  waiting.set(about, sentence);
  callOff();
  callOff = later(restMs, () => {
    spokenState.setState({ spoken: [...waiting.values()].join('; ') });
    waiting.clear();
  });
}
