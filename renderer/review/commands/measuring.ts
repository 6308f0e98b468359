import type { Job } from '../../../electron/contract/jobs.ts';
import type { CommandId } from '../../../engine/wording/english/desk/commands.ts';
import { mutate } from '../../bridge/mutate.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { frameAtSeconds } from '../model/moments.ts';
import { layoutState } from '../state/layoutState.ts';
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
  clipIds.length === 0 ? unavailable(sayReasons('noClipReady')) : available;

const isMeasured = ({ measures }: ReviewContext): Availability =>
  measures?.recordedAt == null ? unavailable(sayReasons('notMeasured')) : available;

type Measuring = Command<ReviewContext>;
const shared = { group: 'measuring', readOnly: 'refused' } as const;

export const measure: Measuring = {
  ...shared,
  ...named('measure'),
  keys: ['M'],
  when: (context) =>
    allOf(
      isOnStage(context),
      context.measuring ? unavailable(sayReasons('beingMeasured')) : available,
      areReady(clipOnStage(context)),
    ),
  run: (context) => start(clipOnStage(context), 'once'),
};

/** Clips that were measured already take no time. */
export const measureAll: Measuring = {
  ...shared,
  ...named('measureAll'),
  keys: ['Shift+M'],
  when: (context) => areReady(measurable(context)),
  run: (context) => start(measurable(context), 'once'),
};

export const panel: Measuring = {
  ...shared,
  ...named('panel'),
  keys: ['T'],
  readOnly: 'allowed',
  run: () => {
    const { large, setLarge } = layoutState.getState();
    setLarge(false);
    // A large picture shows neither; the measures are what can't be had from its bar.
    showPanel(large || panelState.getState().panel === 'card' ? 'measures' : 'card');
  },
};

/** Makes the measured reps the clip's; edges that a person set stay. */
export const adoptMeasuredReps: Measuring = {
  ...shared,
  ...named('takeReps'),
  keys: ['Shift+T'],
  when: (context) =>
    allOf(
      isOnStage(context),
      isMeasured(context),
      (context.measures?.measurement?.reps.length ?? 0) === 0 ? unavailable(sayReasons('noMeasuredReps')) : available,
    ),
  run: async ({ stage }) => {
    if (stage !== null) await mutate('measures.markReps', { clipId: stage.clip.id });
  },
};

/** Makes the view that the joints show the clip's own: only then do grades go by it. */
export const takeView: Measuring = {
  ...shared,
  ...named('takeView'),
  keys: ['Shift+V'],
  when: (context) => {
    const read = context.measures?.measurement?.view ?? null;
    return allOf(
      isOnStage(context),
      isMeasured(context),
      read === null ? unavailable(sayReasons('viewUnknown')) : available,
      read?.view === context.stage?.clip.view ? unavailable(sayReasons('viewTaken')) : available,
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

const layer = (shown: Layer, id: CommandId, key: string): Measuring => ({
  ...shared,
  ...named(id),
  keys: [key],
  readOnly: 'allowed',
  when: isMeasured,
  run: () => layersState.getState().toggle(shown),
});

/** What shows or hides each layer. */
export const layerCommands = {
  path: layer('path', 'layerPath', 'P'),
  disc: layer('disc', 'layerDisc', 'O'),
  joints: layer('joints', 'layerJoints', 'J'),
  curves: layer('curves', 'layerCurves', 'V'),
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
