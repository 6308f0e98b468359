import type { KeyActs } from '../../keys/useKeys.ts';
import { redo, undo } from './historyActs.ts';
import { goToFlagAtCursor, mark, nameFaultAtCursor, removeAtCursor, toggleFine, writeNote } from './judgeActs.ts';
import { changeClip, move } from './moveActs.ts';
import { changeSpeed, step, toggleLoop, togglePlay } from './pictureActs.ts';
import { markEdge, removeRepAtCursor } from './repActs.ts';

/** What the review's keys do. */
export const reviewKeys: KeyActs = {
  cellLeft: () => move('left'),
  cellRight: () => move('right'),
  cellUp: () => move('up'),
  cellDown: () => move('down'),
  cellFirst: () => move('first'),
  cellLast: () => move('last'),
  fine: () => void toggleFine(),
  keep: () => void mark('keep'),
  prefer: () => void mark('prefer'),
  adjust: () => void mark('adjust'),
  correct: () => void mark('correct'),
  stop: () => void mark('stop'),
  nameFault: nameFaultAtCursor,
  note: writeNote,
  goToFlag: goToFlagAtCursor,
  remove: () => void removeAtCursor(),
  markStart: () => void markEdge('start'),
  markLongEnd: () => void markEdge('longEnd'),
  markEnd: () => void markEdge('end'),
  removeRep: () => void removeRepAtCursor(),
  play: togglePlay,
  frameBack: (event) => step(-1, event),
  frameOn: (event) => step(1, event),
  framesBack: (event) => step(-10, event),
  framesOn: (event) => step(10, event),
  slower: () => changeSpeed('slower'),
  faster: () => changeSpeed('faster'),
  loop: toggleLoop,
  previousClip: () => changeClip('previous'),
  nextClip: () => changeClip('next'),
  undo: () => void undo(),
  redo: () => void redo(),
};
