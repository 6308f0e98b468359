import { mutate } from '../../bridge/mutate.ts';
import { rackside } from '../../bridge/rackside.ts';
import { statusState } from '../../bridge/statusState.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { sayNarration } from '../../words/sayNarration.ts';
import { sayProblem } from '../../words/sayProblem.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { type NarrationPhase, narrationState, readNarration } from '../state/narrationState.ts';
import { endListening, listen } from './listenToNarration.ts';
import { beginRecording, endRecording, keepRecording, pauseRecording, resumeRecording } from './recordNarration.ts';
import { isReadable, type ReviewContext } from './reviewContext.ts';

const phaseOf = (): NarrationPhase => narrationState.getState().phase;

/** What was said over the clip on the stage, as far as that was read. */
const narrationOn = ({ stage }: ReviewContext) => {
  const { clipId, narration } = narrationState.getState();
  return clipId !== null && clipId === stage?.clip.id ? narration : null;
};

/** Puts the bar away; what is being recorded is kept first. */
export async function leaveNarrating(context: ReviewContext): Promise<void> {
  endListening();
  await endRecording();
  narrationState.setState({ narrating: 'off', deleting: 'no' });
  context.focus.backOnCard();
}

/** Takes out the bar to speak over the clip with. */
export const narrate: Command<ReviewContext> = {
  ...named('narrate'),
  group: 'picture',
  keys: ['F4'],
  readOnly: 'refused',
  when: isReadable,
  run: async ({ stage, player }) => {
    if (stage === null) return;
    player?.pause();
    narrationState.setState({ narrating: 'on' });
    await readNarration(stage.clip.id);
  },
};

/** Begins to record, pauses, and goes on. */
export const recordNarration: Command<ReviewContext> = {
  ...named('recordNarration'),
  group: 'picture',
  keys: ['Shift+F4'],
  readOnly: 'refused',
  when: (context) => allOf(isReadable(context), isOut(), mayRecord(context)),
  run: async (context) => {
    const phase = phaseOf();
    if (phase === 'recording') await pauseRecording();
    else if (phase === 'paused') resumeRecording();
    else await beginRecording(context);
  },
};

const isOut = (): Availability =>
  narrationState.getState().narrating === 'on' ? available : unavailable(sayReasons('narrateFirst'));

function mayRecord(context: ReviewContext): Availability {
  const phase = phaseOf();
  if (phase === 'recording' || phase === 'paused') return available;
  if (phase !== 'idle') return unavailable(sayReasons('narrationBusy'));
  return narrationOn(context) === null ? available : unavailable(sayReasons('narratedAlready'));
}

/** Ends the recording, or the listening. */
export const stopNarration: Command<ReviewContext> = {
  ...named('stopNarration'),
  group: 'picture',
  keys: ['F7'],
  readOnly: 'refused',
  when: () => {
    const phase = phaseOf();
    return phase === 'recording' || phase === 'paused' || phase === 'listening'
      ? available
      : unavailable(sayReasons('notNarrating'));
  },
  run: async () => {
    if (phaseOf() === 'listening') endListening();
    else await endRecording();
  },
};

const isKept = (context: ReviewContext): Availability => {
  if (phaseOf() === 'recording' || phaseOf() === 'paused') return unavailable(sayReasons('narrationBusy'));
  return narrationOn(context)?.state === 'kept' ? available : unavailable(sayReasons('notNarrated'));
};

/** Plays what was said, and shows what was shown. */
export const listenToNarration: Command<ReviewContext> = {
  ...named('listenToNarration'),
  group: 'picture',
  keys: ['Shift+F7'],
  readOnly: 'refused',
  when: (context) => allOf(isReadable(context), isOut(), isKept(context)),
  run: async (context) => {
    if (phaseOf() === 'listening') endListening();
    else await listen(context);
    context.focus.backOnCard();
  },
};

/** Asks where to, and has a film made of what was said. */
export const saveNarration: Command<ReviewContext> = {
  ...named('saveNarration'),
  group: 'picture',
  keys: [],
  readOnly: 'refused',
  when: (context) => allOf(isOut(), isKept(context)),
  run: async ({ stage }) => {
    if (stage === null) return;
    const suggestedName = sayNarration('filmName', { clip: stage.clip.name });
    const reply = await rackside().askWindow('narrations.save', { clipId: stage.clip.id, suggestedName });
    if (!reply.ok) statusState.getState().tell(sayProblem(reply.problem));
    else if (reply.value.jobId !== null) statusState.getState().tell(sayNarration('filmBegun'));
  },
};

/** Asks whether the narration is to be deleted: no undo brings a voice back. */
export const deleteNarration: Command<ReviewContext> = {
  ...named('deleteNarration'),
  group: 'picture',
  keys: [],
  readOnly: 'refused',
  when: (context) => allOf(isOut(), narrationOn(context) === null ? unavailable(sayReasons('notNarrated')) : available),
  run: () => {
    endListening();
    narrationState.setState({ deleting: 'asked' });
  },
};

/** Deletes it, once that was asked. */
export async function deleteForGood(context: ReviewContext): Promise<void> {
  const narration = narrationOn(context);
  narrationState.setState({ deleting: 'no' });
  if (narration === null || context.stage === null) return;
  const removed = await mutate('narrations.remove', { narrationId: narration.narrationId });
  await readNarration(context.stage.clip.id);
  if (removed !== null) statusState.getState().tell(sayNarration('deleted'));
}

/** Keeps what an interruption left. */
export async function keepInterrupted(context: ReviewContext): Promise<void> {
  const narration = narrationOn(context);
  if (narration?.state !== 'recording' || context.stage === null) return;
  await keepRecording(narration.narrationId, context.stage.clip.id);
}

export const narratingCommands = [
  narrate,
  recordNarration,
  stopNarration,
  listenToNarration,
  saveNarration,
  deleteNarration,
] as const;
