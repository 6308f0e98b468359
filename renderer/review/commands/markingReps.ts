import { mutate } from '../../bridge/mutate.ts';
import { allOf, type Command } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { canPlay } from '../../player/playingCommands.ts';
import { reviewState } from '../../state/reviewState.ts';
import { isOnRep, isOnStage, type ReviewContext } from './reviewContext.ts';

type Edge = 'start' | 'stretchedEnd' | 'end';

/** Marks an edge of a rep at the frame on screen; playing goes on. */
async function markEdge(context: ReviewContext, edge: Edge): Promise<void> {
  const { stage, player } = context;
  if (stage === null || player === null) return;
  const clipId = stage.clip.id;
  const marked = await mutate('reps.mark', { clipId, edge, frame: player.frame() });
  if (marked === null) return;
  // The column of a new rep exists only once the review has been read again.
  await reviewState.getState().refresh();
  const { criterion, column, moveTo } = context.cursor;
  if (criterion !== null && edge === 'start' && column?.clipId === clipId)
    moveTo(criterion, { clipId, rep: marked.rep });
}

type Marking = Command<ReviewContext>;
const shared = { group: 'reps', readOnly: 'refused' } as const;
const canMarkEdge = (context: ReviewContext) => allOf(isOnStage(context), canPlay(context));

export const markStart: Marking = {
  ...shared,
  ...named('markStart'),
  keys: ['S'],
  when: canMarkEdge,
  run: (context) => markEdge(context, 'start'),
};

export const markStretchedEnd: Marking = {
  ...shared,
  ...named('markStretchedEnd'),
  keys: ['L'],
  when: canMarkEdge,
  run: (context) => markEdge(context, 'stretchedEnd'),
};

export const markEnd: Marking = {
  ...shared,
  ...named('markEnd'),
  keys: ['E'],
  when: canMarkEdge,
  run: (context) => markEdge(context, 'end'),
};

/** Moves an edge of the cursor's rep to the frame on screen: a way to mend it without dragging. */
const moveHere = (id: 'moveStartHere' | 'moveStretchedEndHere' | 'moveEndHere', edge: Edge): Marking => ({
  ...shared,
  ...named(id),
  keys: [],
  when: (context) => allOf(canMarkEdge(context), isOnRep(context)),
  run: async ({ stage, player, cursor: { column } }) => {
    if (stage === null || player === null || column === null || column.rep === 'set') return;
    player.pause();
    const { clipId, rep } = column;
    if ((await mutate('reps.moveEdge', { clipId, rep, edge, frame: player.frame() })) !== null)
      await reviewState.getState().refresh();
  },
});

/** Moving edges that are marked to the frame on screen. */
export const moveEdgeCommands: readonly Marking[] = [
  moveHere('moveStartHere', 'start'),
  moveHere('moveStretchedEndHere', 'stretchedEnd'),
  moveHere('moveEndHere', 'end'),
];

export const removeRep: Marking = {
  ...shared,
  ...named('removeRep'),
  keys: ['Shift+Delete', 'Shift+Backspace'],
  when: isOnRep,
  run: async ({ cursor: { column } }) => {
    if (column === null || column.rep === 'set') return;
    await mutate('reps.remove', { clipId: column.clipId, rep: column.rep });
  },
};

const chooseRep: Marking = {
  ...shared,
  group: 'scorecard',
  ...named('chooseRep'),
  keys: ['X'],
  when: isOnRep,
  run: ({ cursor: { column, chosenReps, chooseReps } }) => {
    if (column === null || column.rep === 'set') return;
    const { rep } = column;
    chooseReps(chosenReps.includes(rep) ? chosenReps.filter((one) => one !== rep) : [...chosenReps, rep]);
  },
};

/** Choosing reps on the scorecard. */
export const repChoiceCommands: readonly Marking[] = [chooseRep];

/** Marking where reps start, turn and end, and moving that. */
export const repCommands: readonly Marking[] = [markStart, markStretchedEnd, markEnd, ...moveEdgeCommands, removeRep];
