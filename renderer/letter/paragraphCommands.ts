import { type Availability, available, type Command, unavailable } from '../commands/command.ts';
import { named } from '../commands/named.ts';
import { sayReasons } from '../words/sayReasons.ts';
import type { LetterContext } from './letterContext.ts';
import { letterDesk, showView } from './letterDesk.ts';
import { addBelow, leaveOut, move } from './paragraphActs.ts';
import { type Line, placeBeyond } from './paragraphMoves.ts';

const isLetter = ({ lines }: LetterContext): Availability =>
  lines === null ? unavailable(sayReasons('letterNotShown')) : available;

/** The paragraph at hand while the letter is edited; null where there is none. */
const handOf = ({ lines }: LetterContext): Line | null => {
  const { view, at } = letterDesk.getState();
  if (view.kind !== 'editing') return null;
  return lines?.find(({ id, kind }) => id === at && kind === 'paragraph') ?? null;
};

function hasHand(context: LetterContext): Availability {
  if (letterDesk.getState().view.kind !== 'editing') return unavailable(sayReasons('editFirst'));
  return handOf(context) === null ? unavailable(sayReasons('noParagraph')) : available;
}

const canMove =
  (direction: 'up' | 'down') =>
  (context: LetterContext): Availability => {
    const hand = handOf(context);
    if (hand === null) return hasHand(context);
    if (placeBeyond(context.lines ?? [], hand.id, direction) !== null) return available;
    return unavailable(sayReasons(direction === 'up' ? 'firstParagraph' : 'lastParagraph'));
  };

const moveHand =
  (direction: 'up' | 'down') =>
  async (context: LetterContext): Promise<void> => {
    const hand = handOf(context);
    const place = hand === null ? null : placeBeyond(context.lines ?? [], hand.id, direction);
    if (hand !== null && place !== null) await move(context.sessionId, hand.id, place);
  };

export const editLetter: Command<LetterContext> = {
  ...named('editLetter'),
  group: 'anywhere',
  keys: ['Mod+Shift+E'],
  readOnly: 'refused',
  when: isLetter,
  run: ({ lines }) => {
    if (letterDesk.getState().view.kind === 'editing') return showView({ kind: 'preview', document: 'letter' });
    const first = lines?.find(({ kind }) => kind === 'paragraph')?.id ?? null;
    const { at } = letterDesk.getState();
    showView({ kind: 'editing' });
    letterDesk.setState({ focus: lines?.some(({ id }) => id === at) === true ? at : first });
  },
};

export const addParagraph: Command<LetterContext> = {
  ...named('addParagraph'),
  group: 'anywhere',
  keys: ['Mod+Shift+A'],
  readOnly: 'refused',
  when: hasHand,
  run: async (context) => {
    const hand = handOf(context);
    if (hand !== null) await addBelow(context.sessionId, hand.id);
  },
};

export const leaveOutParagraph: Command<LetterContext> = {
  ...named('leaveOutParagraph'),
  group: 'anywhere',
  keys: ['Mod+Shift+H'],
  readOnly: 'refused',
  when: hasHand,
  run: async (context) => {
    const hand = handOf(context);
    if (hand !== null) await leaveOut(context.sessionId, hand.id);
  },
};

export const paragraphUp: Command<LetterContext> = {
  ...named('paragraphUp'),
  group: 'anywhere',
  keys: ['Mod+Shift+PageUp'],
  readOnly: 'refused',
  when: canMove('up'),
  run: moveHand('up'),
};

export const paragraphDown: Command<LetterContext> = {
  ...named('paragraphDown'),
  group: 'anywhere',
  keys: ['Mod+Shift+PageDown'],
  readOnly: 'refused',
  when: canMove('down'),
  run: moveHand('down'),
};

/** What is done with the paragraphs of a letter. */
export const paragraphCommands: readonly Command<LetterContext>[] = [
  editLetter,
  addParagraph,
  leaveOutParagraph,
  paragraphUp,
  paragraphDown,
];
