import { onTestFinished } from 'vitest';
import type { Result } from '../../../electron/contract/requests.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { nameTranslations } from '../../../engine/exercises/searchExercises.ts';
import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import type { Clip, Entry, Flag, Rep } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { Moment } from '../../../engine/time/moment.ts';
import { statusState } from '../../../renderer/bridge/statusState.ts';
import { type Availability, bindCommands, type Press } from '../../../renderer/commands/command.ts';
import { reviewCommands } from '../../../renderer/review/commands/reviewCommands.ts';
import type { ReviewContext } from '../../../renderer/review/commands/reviewContext.ts';
import { createReviewDesk, type ReviewDesk } from '../../../renderer/review/commands/reviewDesk.ts';
import { menuState, panelState, suggestionState } from '../../../renderer/review/state/panelState.ts';
import { coverState, drawingState, setUpState } from '../../../renderer/review/state/pictureTools.ts';
import { playerState, playhead } from '../../../renderer/review/state/playerState.ts';
import { layersState, stripState, zoomState } from '../../../renderer/review/state/viewState.ts';
import { catalogueState } from '../../../renderer/state/catalogueState.ts';
import { measuresState, tablesState } from '../../../renderer/state/clipState.ts';
import { cursorState } from '../../../renderer/state/cursorState.ts';
import { jobsState } from '../../../renderer/state/jobsState.ts';
import { reviewState } from '../../../renderer/state/reviewState.ts';
import { screenState } from '../../../renderer/state/screenState.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';
import { type FakePlayer, fakePlayer } from './fakePlayer.ts';
import { type Answers, changed, type FakeRackside, fakeRackside } from './fakeRackside.ts';
import { reviewAnswer } from './reviewAnswer.ts';
import { startAfresh } from './startAfresh.ts';

/** Three hundred frames at 30 a second. */
export const thirtyFps: FrameTable = {
  timeBase: { numerator: 1, denominator: 30 },
  ticks: Array.from({ length: 300 }, (_, frame) => frame),
  endTicks: 300,
};

const momentAt = (frame: number): Moment => ({ frame, ticks: frame });

const rep = (index: number, start: number): Rep => ({
  index,
  start: momentAt(start),
  stretchedEnd: momentAt(start + 20),
  end: momentAt(start + 40),
});

/** A squat of three reps filmed from the side; they start at frames 10, 60 and 110. */
export const squatClip = (change: Partial<Clip> = {}): Clip => ({
  id: 'c1',
  name: 'Squat',
  view: 'side',
  realTimeFactor: 1,
  reps: [rep(1, 10), rep(2, 60), rep(3, 110)],
  ...change,
});

export const squatEntry = (change: Partial<Entry> = {}): Entry => ({
  id: 'e1',
  exercise: 'back-squat',
  clips: [squatClip()],
  flags: [],
  ticks: [],
  ...change,
});

export const depthFlag = (change: Partial<Flag> = {}): Flag => ({
  id: 'f1',
  clip: 'c1',
  criterion: 'depth',
  fault: null,
  severity: 'adjust',
  reps: [2],
  at: momentAt(80),
  note: '',
  cue: '',
  ...change,
});

export const suggestionOf = (id: string, atS: number): Suggestion => ({
  id,
  criterion: 'depth',
  fault: null,
  severity: 'adjust',
  reps: [2],
  atS,
  measure: { name: 'depth', value: 0.1, plusMinus: 0.01, unit: 'm' },
  message: { id: 'eccentricTime', values: {} },
});

/** What measuring says of a clip: nothing, unless a test says otherwise. */
export const measuresAnswer = (change: Partial<Result<'measures.get'>> = {}): Result<'measures.get'> => ({
  setUp: {
    discDiameterM: 0.45,
    knownLength: null,
    facing: null,
    follow: 'auto',
    plumb: null,
    clicks: [],
    depthClicks: [],
    backClicks: [],
  },
  measurement: null,
  recordedAt: null,
  jobId: null,
  suggestions: [],
  dismissed: [],
  ...change,
});

const media = (clipId: string): Result<'review.get'>['media'][number] => ({
  clipId,
  ready: true,
  trouble: null,
  proxy: false,
  durationUs: 10_000_000,
  frames: 300,
  constantRate: true,
  meanFps: 30,
  hasPoster: false,
  filmstripPictures: 0,
  width: 1080,
  height: 1920,
});

export type ReviewBench = {
  readonly desk: ReviewDesk;
  readonly context: ReviewContext;
  readonly player: FakePlayer;
  readonly rackside: FakeRackside;
  /** Runs a command by its id, as its key does, and waits until what it asked for is answered. */
  readonly run: (id: string, press?: Press) => Promise<void>;
  readonly availability: (id: string) => Availability;
  /** Why the command can't run now; fails where it can. */
  readonly reasonAgainst: (id: string) => string;
  /** Puts the cursor of the scorecard on a cell. */
  readonly moveTo: (criterion: string, rep: number | 'set') => void;
  /** Flags whose note was asked to have the focus, and 'card' where the focus was let go. */
  readonly focused: readonly string[];
};

type ReviewBenchOptions = {
  readonly entries?: Entry[];
  readonly review?: Partial<Result<'review.get'>>;
  readonly measures?: Partial<Result<'measures.get'>>;
  readonly answers?: Answers;
  /** The frame that the player shows; null: nothing can play. */
  readonly frame?: number | null;
};

const slices = [
  statusState,
  coverState,
  cursorState,
  drawingState,
  layersState,
  menuState,
  panelState,
  playerState,
  playhead,
  setUpState,
  stripState,
  suggestionState,
  zoomState,
  catalogueState,
  jobsState,
  measuresState,
  reviewState,
  screenState,
  tablesState,
] as const;

/** Opens a session's review over the page's own stores, with a player and a bridge that only remember. */
export async function reviewBench(options: ReviewBenchOptions = {}): Promise<ReviewBench> {
  const { frame = 70 } = options;
  let entries = options.entries ?? [squatEntry()];
  const reset = (): void => {
    for (const slice of slices) startAfresh<unknown>(slice as Parameters<typeof startAfresh<unknown>>[0]);
  };
  reset();
  onTestFinished(reset);
  const clips = entries.flatMap((entry) => entry.clips);
  const rackside = fakeRackside({
    'review.get': () => ({ ...reviewAnswer(entries), media: clips.map(({ id }) => media(id)), ...options.review }),
    'catalogue.get': ({ language = 'en' }) => {
      const spoken = translated(shipped, language);
      return {
        rubric: spoken.rubric,
        exercises: [...spoken.exercises],
        cautions: [...spoken.cautions],
        translations: nameTranslations(spoken),
        rubricVersions: [1],
      };
    },
    'clips.frameTable': () => ({ table: thirtyFps, playback: thirtyFps }),
    'measures.get': () => measuresAnswer(options.measures),
    'measures.recording': () => ({ recording: null }),
    'flags.add': ({ clipId, frame: at, fault = null, note = '', cue = '', ...mark }) => {
      const flag: Flag = { ...mark, id: 'f9', clip: clipId, fault, note, cue, at: momentAt(at) };
      entries = entries.map((entry) =>
        entry.clips.some(({ id }) => id === clipId) ? { ...entry, flags: [...entry.flags, flag] } : entry,
      );
      return { flagId: 'f9' };
    },
    'flags.update': () => changed,
    'flags.remove': () => changed,
    'ticks.set': () => changed,
    'ticks.setMany': () => changed,
    'reps.mark': () => ({ rep: 4 }),
    'reps.remove': () => changed,
    'history.undo': () => changed,
    'history.redo': () => changed,
    'measures.start': () => ({ jobIds: [] }),
    'measures.markReps': () => changed,
    'measures.addOffered': () => changed,
    'suggestions.accept': () => ({ flagId: 'f8' }),
    'suggestions.dismiss': () => changed,
    ...options.answers,
  });
  await reviewState.getState().open('s1');
  for (const { id } of clips) await tablesState.getState().load(id);
  const [first] = clips;
  if (first !== undefined) await measuresState.getState().load(first.id);
  const focused: string[] = [];
  const desk = createReviewDesk('s1', {
    onNote: (flagId) => void focused.push(flagId),
    backOnCard: () => focused.push('card'),
  });
  const player = fakePlayer(frame ?? 0);
  if (frame !== null) desk.setPlayer(player);
  playhead.setState({ clipId: first?.id ?? null, frame: frame ?? 0, settled: true });
  const bound = bindCommands(reviewCommands, desk.context);
  const known = (id: string) => {
    const command = bound.find(({ face }) => face.id === id);
    if (command === undefined) throw new Error(`The review has no command ${id}.`);
    return command;
  };
  return {
    desk,
    context: desk.context,
    player,
    rackside,
    run: async (id, press = 'pressed') => {
      known(id).run(press);
      await settled();
    },
    availability: (id) => known(id).availability(),
    reasonAgainst: (id) => {
      const availability = known(id).availability();
      if (availability.can) throw new Error(`The command ${id} can run.`);
      return availability.because;
    },
    moveTo: (criterion, rep) => cursorState.getState().moveTo(criterion, { clipId: first?.id ?? '', rep }),
    focused,
  };
}

/** Waits until every answer that is there has been taken in: answers come without timers. */
async function settled(): Promise<void> {
  for (let turn = 0; turn < 50; turn += 1) await Promise.resolve();
}
