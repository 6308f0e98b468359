import { clipsOfSet, frameOnCamera, leadOf } from '../../../engine/review/camerasOfSet.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { tablesState } from '../../state/clipState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayCameras } from '../../words/sayCameras.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { sameMomentState } from '../state/sameMomentState.ts';
import { frameOnScreen } from './onScreen.ts';
import { isOnStage, isReadable, type ReviewContext } from './reviewContext.ts';

/** The other camera of the set on the stage: the one after it, going round; null where nobody else filmed it. */
export function otherCamera({ stage }: Pick<ReviewContext, 'stage'>): Clip | null {
  if (stage === null) return null;
  const cameras = clipsOfSet(stage.entry.clips, stage.clip);
  const at = cameras.findIndex(({ id }) => id === stage.clip.id);
  return cameras.length < 2 ? null : (cameras[(at + 1) % cameras.length] ?? null);
}

/** The clip that the one on the stage is laid beside: its neighbour in the exercise, where both are sets of their own. */
function neighbour({ stage }: ReviewContext): Clip | null {
  if (stage === null) return null;
  const { clips } = stage.entry;
  const isAlone = (clip: Clip): boolean => clipsOfSet(clips, clip).length === 1;
  const at = clips.findIndex(({ id }) => id === stage.clip.id);
  if (!isAlone(stage.clip)) return null;
  return [clips[at - 1], clips[at + 1]].find((clip) => clip !== undefined && isAlone(clip)) ?? null;
}

const hasOther = (context: ReviewContext): Availability =>
  allOf(isReadable(context), otherCamera(context) === null ? unavailable(sayReasons('oneCamera')) : available);

const hasNeighbour = (context: ReviewContext): Availability =>
  allOf(isOnStage(context), neighbour(context) === null ? unavailable(sayReasons('noOtherSet')) : available);

/** The frame of the other camera at the moment on screen; null while its frames are not known. */
async function frameThere(context: ReviewContext, other: Clip, frame: number): Promise<number | null> {
  const { stage } = context;
  const table = (await tablesState.getState().load(other.id))?.table;
  if (table === undefined || stage === null || stage.tables === null) return null;
  return frameOnCamera(frame, { clip: stage.clip, table: stage.tables.table }, { clip: other, table });
}

/** Lays two clips together and says by what. The one that comes first in the exercise leads. */
async function pair(
  context: ReviewContext,
  one: Clip,
  other: Clip,
  how?: { readonly one: number; readonly other: number },
) {
  const clips = context.stage?.entry.clips ?? [];
  const inOrder = clips.indexOf(one) < clips.indexOf(other);
  const [lead, clip] = inOrder ? [one, other] : [other, one];
  const frames = how && (inOrder ? { leadFrame: how.one, frame: how.other } : { leadFrame: how.other, frame: how.one });
  const laid = await mutate('cameras.pair', {
    ...{ leadId: lead.id, clipId: clip.id },
    ...(frames && { by: { how: 'frames', ...frames } }),
  });
  if (laid !== null) statusState.getState().say(sayCameras('laid', { by: laid.by, clip: clip.name, lead: lead.name }));
}

/** Moves the other camera by frames against the clip on the stage, at the moment on screen. */
async function nudge(context: ReviewContext, frames: 1 | -1): Promise<void> {
  const other = otherCamera(context);
  const frame = await frameOnScreen(context);
  const { stage } = context;
  if (other === null || frame === null || stage === null) return;
  const there = await frameThere(context, other, frame);
  if (there === null) return;
  const lead = leadOf(stage.entry.clips, stage.clip);
  const isLead = lead.id === stage.clip.id;
  const shown = Math.max(0, there + frames);
  await mutate('cameras.pair', {
    ...{ leadId: isLead ? stage.clip.id : other.id, clipId: isLead ? other.id : stage.clip.id },
    by: { how: 'frames', ...(isLead ? { leadFrame: frame, frame: shown } : { leadFrame: shown, frame }) },
  });
}

type OfCameras = Command<ReviewContext>;
const shared = { group: 'picture', readOnly: 'refused' } as const;

export const showOtherCamera: OfCameras = {
  ...named('otherCamera'),
  group: 'picture',
  keys: ['Shift+O'],
  readOnly: 'allowed',
  when: hasOther,
  run: async (context) => {
    const other = otherCamera(context);
    const frame = await frameOnScreen(context);
    if (other === null || frame === null) return;
    const there = await frameThere(context, other, frame);
    if (there !== null) reviewState.getState().show({ clipId: other.id, frame: there });
  },
};

export const layCameras: OfCameras = {
  ...shared,
  ...named('layCameras'),
  keys: [],
  when: hasNeighbour,
  run: async (context) => {
    const other = neighbour(context);
    if (context.stage !== null && other !== null) await pair(context, context.stage.clip, other);
  },
};

/** Asked for twice: on the moment in one clip, then on the same moment in the other. */
export const sameMoment: OfCameras = {
  ...shared,
  ...named('sameMoment'),
  keys: [],
  when: isReadable,
  run: async (context) => {
    const frame = await frameOnScreen(context);
    const { stage } = context;
    if (stage === null || frame === null) return;
    const { marked } = sameMomentState.getState();
    const first = stage.entry.clips.find(({ id }) => id === marked?.clipId && id !== stage.clip.id);
    if (marked === null || first === undefined) {
      sameMomentState.setState({ marked: { clipId: stage.clip.id, frame } });
      statusState.getState().say(sayCameras('nowTheOther', { clip: stage.clip.name }));
      return;
    }
    sameMomentState.setState({ marked: null });
    await pair(context, first, stage.clip, { one: marked.frame, other: frame });
  },
};

export const otherEarlier: OfCameras = {
  ...shared,
  ...named('otherEarlier'),
  keys: [],
  when: hasOther,
  run: (context) => nudge(context, -1),
};

export const otherLater: OfCameras = {
  ...shared,
  ...named('otherLater'),
  keys: [],
  when: hasOther,
  run: (context) => nudge(context, 1),
};

export const partCameras: OfCameras = {
  ...shared,
  ...named('partCameras'),
  keys: [],
  when: hasOther,
  run: async (context) => {
    const { stage } = context;
    const other = otherCamera(context);
    if (stage === null || other === null) return;
    await mutate('cameras.part', { clipId: stage.clip.sameSet === undefined ? other.id : stage.clip.id });
  },
};

/** Two cameras of one set. */
export const cameraCommands: readonly OfCameras[] = [
  showOtherCamera,
  layCameras,
  sameMoment,
  otherEarlier,
  otherLater,
  partCameras,
];
