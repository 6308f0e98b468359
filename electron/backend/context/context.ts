import type { JobStep } from '../../../engine/wording/sayJob.ts';
import type { BackendSettings } from '../../contract/backend.ts';
import type { AnyEvent } from '../../contract/events.ts';
import type { Job, LineMove } from '../../contract/jobs.ts';
import type { LibraryState } from '../../contract/library.ts';
import type { JudgingData } from '../catalogue/loadCatalogue.ts';
import type { MediaTools } from '../media/tools/mediaTools.ts';
import type { Library, LibraryFacts } from '../store/library.ts';
import type { Task } from './tasks.ts';

/** What every handler and job works with. */
export type Context = JudgingData & {
  readonly settings: BackendSettings;
  /** The open library. Throws the problem that keeps it shut, or `library-missing`. */
  readonly library: () => Library;
  readonly libraryState: () => LibraryState;
  readonly createLibrary: (facts: LibraryFacts) => Library;
  /** ffmpeg and ffprobe, looked for once. */
  readonly mediaTools: () => Promise<MediaTools>;
  readonly jobs: Jobs;
  /** The folder whose films come into the inbox by themselves, and whether it is there; null = none. */
  readonly watchedFolder: () => { readonly folder: string; readonly there: boolean } | null;
  /** Resolves once every summary in the library was made from the judging data of this app. */
  readonly summariesRenewed: () => Promise<void>;
  readonly emit: (event: AnyEvent) => void;
};

/** The long work, as those see it who ask for it. */
export type Jobs = {
  /** Puts a job in line; gives its id. */
  readonly add: (job: NewJob) => string;
  /** Tells of a job that came with a transaction of the caller's, and sees that it is run. */
  readonly tell: (jobId: string) => void;
  readonly list: () => Job[];
  /** Stops a job that waits or runs. Throws `not-found`, or `conflict` when it has ended. */
  readonly cancel: (jobId: string) => void;
  /** Puts a job that failed or was cancelled in line again. Throws `not-found` or `conflict`. */
  readonly retry: (jobId: string) => void;
  /** Puts a job that failed out of sight. Throws `not-found` or `conflict`. */
  readonly dismiss: (jobId: string) => void;
  /** The ids of what waits to be measured, in the order it is taken up. */
  readonly line: () => string[];
  /** Puts one of them elsewhere in that order. Throws `not-found` or `conflict`. */
  readonly move: (jobId: string, to: LineMove) => void;
  /** Says which clip is on screen: what waits for it is taken up before what nobody has put in its place. */
  readonly showing: (clipId: string) => void;
  /** Stops measuring joints, puts what was begun back in line, and takes up no more. */
  readonly pauseMeasuring: () => void;
  readonly goOnMeasuring: () => void;
};

export type NewJob = {
  readonly kind: Job['kind'];
  readonly title: JobStep;
  readonly sessionId: string | null;
  readonly clipId?: string;
  readonly task: Task;
  /** 0, asked for by a person, where nothing is said. */
  readonly rank?: number;
};
