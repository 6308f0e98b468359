import type { Job } from '../../../electron/contract/jobs.ts';
import { mutate } from '../../bridge/mutate.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { frameAtSeconds } from '../model/moments.ts';
import { clearBeside, panelState, type ReviewPanel } from '../state/panelState.ts';
import { type Layer, layersState } from '../state/viewState.ts';
import { goToFrame } from './moving.ts';
import { isOnStage, type ReviewContext } from './reviewContext.ts';

/** Clips of the session that can be measured: those that can be shown. */
const measurable = ({ data }: ReviewContext): readonly string[] =>
  data?.media.flatMap(({ clipId, ready }) => (ready ? [clipId] : [])) ?? [];

async function start(clipIds: readonly string[], again: 'again' | 'once'): Promise<void> {
  await mutate('measures.start', { clipIds: [...clipIds], again: again === 'again' });
}

const clipOnStage = (context: ReviewContext): readonly string[] =>
  measurable(context).filter((clipId) => clipId === context.stage?.clip.id);

/** Measures the clip on the stage again. */
export const measureAgain = (context: ReviewContext): Promise<void> => start(clipOnStage(context), 'again');

/** Shows the card or the measures, closing whatever replaced them. */
export function showPanel(panel: ReviewPanel): void {
  clearBeside();
  panelState.getState().show(panel);
}

/** Shows the frame of media seconds of the clip on the stage. */
export function goToSeconds(context: ReviewContext, seconds: number): void {
  const { stage, player } = context;
  if (stage === null || stage.tables === null) return;
  player?.pause();
  goToFrame(context, stage.clip.id, frameAtSeconds(seconds, stage.tables.table));
}

const areReady = (clipIds: readonly string[]): Availability =>
  clipIds.length === 0
    ? unavailable('No clip is ready to be measured yet; try again when the clips have been read.')
    : available;

const isMeasured = ({ measures }: ReviewContext): Availability =>
  measures?.recordedAt == null ? unavailable('This clip has not been measured yet: measure it first.') : available;

type Measuring = Command<ReviewContext>;
const shared = { group: 'Measuring', readOnly: 'refused' } as const;

export const measure: Measuring = {
  ...shared,
  id: 'measure',
  label: 'Measure this clip',
  keys: ['M'],
  button: 'Measure',
  when: (context) =>
    allOf(
      isOnStage(context),
      context.measuring ? unavailable('This clip is being measured already.') : available,
      areReady(clipOnStage(context)),
    ),
  run: (context) => start(clipOnStage(context), 'once'),
};

/** Clips that were measured already take no time. */
export const measureAll: Measuring = {
  ...shared,
  id: 'measureAll',
  label: 'Measure all clips of the session',
  keys: ['Shift+M'],
  button: 'Measure all clips',
  when: (context) => areReady(measurable(context)),
  run: (context) => start(measurable(context), 'once'),
};

export const panel: Measuring = {
  ...shared,
  id: 'panel',
  label: 'Show the measures, or the scorecard again',
  keys: ['T'],
  readOnly: 'allowed',
  run: () => showPanel(panelState.getState().panel === 'card' ? 'measures' : 'card'),
};

/** Makes the measured reps the clip's; edges that a person set stay. */
export const adoptMeasuredReps: Measuring = {
  ...shared,
  id: 'takeReps',
  label: 'Use the measured reps as the clip’s reps',
  keys: ['Shift+T'],
  button: 'Use the measured reps',
  when: (context) =>
    allOf(
      isOnStage(context),
      isMeasured(context),
      (context.measures?.measurement?.reps.length ?? 0) === 0
        ? unavailable('Measuring found no reps in this clip.')
        : available,
    ),
  run: async ({ stage }) => {
    if (stage !== null) await mutate('measures.markReps', { clipId: stage.clip.id });
  },
};

/** Makes the view that the joints show the clip's own: only then do grades go by it. */
export const takeView: Measuring = {
  ...shared,
  id: 'takeView',
  label: 'Use the view that the joints show as the clip’s view',
  keys: ['Shift+V'],
  button: 'Use this view',
  when: (context) => {
    const read = context.measures?.measurement?.view ?? null;
    return allOf(
      isOnStage(context),
      isMeasured(context),
      read === null ? unavailable('The joints don’t show where the camera stands: choose the view.') : available,
      read?.view === context.stage?.clip.view ? unavailable('That is the clip’s view already.') : available,
    );
  },
  run: async ({ stage, measures }) => {
    const read = measures?.measurement?.view ?? null;
    if (stage === null || read === null) return;
    await mutate('clips.update', { clipId: stage.clip.id, change: { view: read.view } });
  },
};

/** Makes a movement that was offered, by its index, a rep of the clip on the stage. */
export async function addOfferedRep({ stage }: ReviewContext, offered: number): Promise<void> {
  if (stage !== null) await mutate('measures.addOffered', { clipId: stage.clip.id, offered });
}

const layer = (shown: Layer, id: string, key: string, button: string, what: string): Measuring => ({
  ...shared,
  id,
  label: `Show or hide ${what}`,
  keys: [key],
  button,
  readOnly: 'allowed',
  when: isMeasured,
  run: () => layersState.getState().toggle(shown),
});

/** What shows or hides each layer. */
export const layerCommands = {
  path: layer('path', 'layerPath', 'P', 'Path', 'the path'),
  disc: layer('disc', 'layerDisc', 'O', 'Disc', 'the disc’s outline'),
  joints: layer('joints', 'layerJoints', 'J', 'Joints', 'the joints'),
  curves: layer('curves', 'layerCurves', 'V', 'Curves', 'the curves on the strip'),
} as const satisfies Readonly<Record<Layer, Measuring>>;

/** Measuring clips, and showing what was measured. */
export const measuringCommands: readonly Measuring[] = [measure, measureAll, panel, adoptMeasuredReps, takeView];

/** The newest job that measures a clip, unless it is done. */
export const openMeasuring = (jobs: readonly Job[], clipId: string): Job | null => {
  const newest = jobs.findLast((job) => job.kind === 'measure' && job.clipId === clipId);
  return newest === undefined || newest.state === 'done' ? null : newest;
};

export const isUnderWay = (job: Job | null): job is Job =>
  job !== null && (job.state === 'waiting' || job.state === 'running');
