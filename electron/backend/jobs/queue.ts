import { randomUUID } from 'node:crypto';
import * as v from 'valibot';
import type { JobStep } from '../../../engine/wording/sayJob.ts';
import type { AnyEvent } from '../../contract/events.ts';
import type { Job, LineMove } from '../../contract/jobs.ts';
import { ProblemError } from '../../contract/reply.ts';
import { secondsLeft } from '../../contract/timeLeft.ts';
import type { Jobs, NewJob } from '../context/context.ts';
import { problemOf } from '../context/problems.ts';
import { taskSchema } from '../context/tasks.ts';
import type { Log } from '../log/log.ts';
import { inTransaction } from '../store/connection.ts';
import {
  countWaitingJobs,
  findJob,
  findOpenMeasuring,
  insertJob,
  type JobLane,
  type JobRow,
  listJobs,
  listMeasuringLine,
  nextWaitingJob,
  recoverJobs,
  setJobState,
  setRank,
} from '../store/jobs.ts';
import type { Library } from '../store/library.ts';
import { messageOfText, textOfMessage } from '../store/storedMessage.ts';
import { ranksAfterMove } from './line.ts';

/** What a running job gets: a signal to stop, and a way to report progress (0-1, null = unknown). */
export type JobTools = {
  readonly signal: AbortSignal;
  readonly report: (progress: number | null, step: JobStep | null) => void;
};

/** What a task gets: the log besides. */
export type TaskTools = JobTools & { readonly log: Log };

type Host = {
  readonly library: () => Library;
  readonly emit: (event: AnyEvent) => void;
  readonly run: (job: JobRow, tools: JobTools) => Promise<void>;
  /** Whether measuring is paused; never unless something is given. */
  readonly isPaused?: () => boolean;
  /** The time that passes, in milliseconds; `performance.now` unless another is given. */
  readonly nowMs?: () => number;
};

type Running = {
  readonly id: string;
  /** It measures joints: what a pause stops. */
  readonly takesLong: boolean;
  readonly abort: AbortController;
  readonly startedMs: number;
  progress: number | null;
  step: JobStep | null;
};

/** Why a running job is stopped; the first reason stands. */
type StopReason = 'cancelled' | 'closing' | 'paused';
const stop = ({ abort }: Running, reason: StopReason): void => abort.abort(reason);

type End = { readonly state: Job['state']; readonly message: string };

/** One line of jobs: what runs, and the loop that takes up the next. */
type Lane = {
  readonly name: JobLane;
  running: Running | undefined;
  loop: Promise<void> | undefined;
  /** How long each job took that was done since the lane was last empty. */
  tookS: number[];
};

/**
 * Long work in three lanes, so that measuring and handing over, which take minutes, hold up no import. A lane runs one job at a
 * time, in the order asked for. The queue's state is in the library: a job that a crash or a quit interrupted starts over when
 * the library is next opened.
 */
export class JobQueue implements Jobs {
  readonly #host: Host;
  readonly #lanes: readonly Lane[] = (['footage', 'measuring', 'handover'] as const).map((name) => ({
    name,
    running: undefined,
    loop: undefined,
    tookS: [],
  }));
  /** How jobs ended whose end could not be stored: the disk was full, say. It is stored as soon as it can be. */
  readonly #unstored = new Map<string, End>();
  #closed = false;
  #clipOnScreen: string | null = null;

  constructor(host: Host) {
    this.#host = host;
  }

  /** Resumes the jobs that an earlier process left. */
  resume(): void {
    recoverJobs(this.#host.library().writing);
    this.#wake();
  }

  /** Puts a job in line; gives its id. */
  add(job: NewJob): string {
    const id = insertNewJob(this.#host.library(), job);
    this.tell(id);
    return id;
  }

  /** Announces a job that was stored in somebody else's transaction, and has it run. */
  tell(jobId: string): void {
    this.#emit(jobId);
    if (this.#existing(jobId).kind === 'measure') this.#tellLine();
    this.#wake();
  }

  list(): Job[] {
    return listJobs(this.#host.library().reading).map((row) => this.#jobOf(this.#asEnded(row)));
  }

  /** Stops a job that waits or runs. Throws `not-found`, or `conflict` when it has ended. */
  cancel(jobId: string): void {
    const job = this.#existing(jobId);
    const running = this.#runningOf(jobId);
    if (running) {
      stop(running, 'cancelled');
      return;
    }
    if (job.state !== 'waiting') {
      throw new ProblemError('conflict', 'jobEnded');
    }
    this.#move(jobId, 'cancelled', '');
  }

  /** Puts a job that failed or was cancelled in line again. Throws `not-found` or `conflict`. */
  retry(jobId: string): void {
    const job = this.#existing(jobId);
    if (job.state !== 'failed' && job.state !== 'cancelled') {
      throw new ProblemError('conflict', 'jobNotFailed');
    }
    this.#move(jobId, 'waiting', '');
    this.#wake();
  }

  /** Puts a job that failed out of sight. Throws `not-found` or `conflict`. */
  dismiss(jobId: string): void {
    const job = this.#existing(jobId);
    if (job.state !== 'failed') throw new ProblemError('conflict', 'jobNotFailed');
    this.#move(jobId, 'cancelled', job.message);
  }

  /** The ids of what waits to be measured, in the order it is taken up. */
  line(): string[] {
    return listMeasuringLine(this.#host.library().reading, this.#clipOnScreen).map(({ id }) => id);
  }

  /** Puts one of them elsewhere in that order. Throws `not-found`, or `conflict` when it doesn't wait there. */
  move(jobId: string, to: LineMove): void {
    this.#existing(jobId);
    const { reading, writing } = this.#host.library();
    const ranks = ranksAfterMove(listMeasuringLine(reading, this.#clipOnScreen), jobId, to);
    if (ranks.length === 0) throw new ProblemError('conflict', 'jobNotInLine');
    inTransaction(writing, () => {
      for (const one of ranks) setRank(writing, one);
    });
    this.#tellLine();
  }

  /** Says which clip is on screen. */
  showing(clipId: string): void {
    if (clipId === this.#clipOnScreen) return;
    this.#clipOnScreen = clipId;
    if (findOpenMeasuring(this.#host.library().reading, clipId)) this.#tellLine();
  }

  /** Puts the measuring of joints that runs back in line; no more is taken up while the host says that it is paused. */
  pauseMeasuring(): void {
    const { running } = this.#lanes.find(({ name }) => name === 'measuring') ?? {};
    if (running?.takesLong) stop(running, 'paused');
  }

  goOnMeasuring(): void {
    this.#wake();
  }

  /** Interrupts what runs, leaves it in line for the next opening, and resolves when nothing runs any more. */
  async close(): Promise<void> {
    this.#closed = true;
    for (const { running } of this.#lanes) if (running) stop(running, 'closing');
    await Promise.all(this.#lanes.map((lane) => lane.loop));
  }

  #wake(): void {
    if (this.#closed) return;
    for (const lane of this.#lanes) lane.loop ??= this.#work(lane);
  }

  async #work(lane: Lane): Promise<void> {
    // The request that asked for the job is answered first.
    await new Promise(setImmediate);
    try {
      this.#storeEnds();
      while (!this.#closed) {
        const paused = this.#host.isPaused?.() ?? false;
        const view = { clipOnScreen: this.#clipOnScreen, paused };
        const job = nextWaitingJob(this.#host.library().reading, lane.name, view);
        if (!job) break;
        await this.#runOne(lane, job);
      }
    } catch (error) {
      // A job's state could not be stored (the disk is full, say): the rest waits for the next job or opening.
      problemOf(error, 'the jobs');
    } finally {
      lane.loop = undefined;
      lane.tookS = [];
    }
  }

  async #runOne(lane: Lane, job: JobRow): Promise<void> {
    const started = { startedMs: this.#nowMs(), progress: null, step: null };
    const takesLong = job.kind === 'measure' && takesLongToMeasure(job.task);
    const running: Running = { id: job.id, abort: new AbortController(), takesLong, ...started };
    lane.running = running;
    this.#move(job.id, 'running', '');
    const end = await this.#outcomeOf(job, running);
    if (end.state === 'done') lane.tookS.push(this.#secondsSince(running));
    this.#end(lane, job.id, end);
  }

  async #outcomeOf(job: JobRow, running: Running): Promise<End> {
    try {
      const report: JobTools['report'] = (progress, step) => this.#report(running, progress, step);
      await this.#host.run(job, { signal: running.abort.signal, report });
      return { state: 'done', message: '' };
    } catch (error) {
      const { code, message } = problemOf(error, `a job (${job.kind})`);
      const reason: StopReason | undefined = running.abort.signal.reason;
      if (reason === 'closing' || reason === 'paused') return { state: 'waiting', message: '' };
      return { state: code === 'cancelled' ? 'cancelled' : 'failed', message: textOfMessage(message) };
    }
  }

  #end(lane: Lane, jobId: string, end: End): void {
    lane.running = undefined;
    this.#unstored.set(jobId, end);
    try {
      this.#storeEnds();
    } finally {
      this.#emit(jobId);
    }
  }

  #storeEnds(): void {
    for (const [jobId, { state, message }] of this.#unstored) {
      setJobState(this.#host.library().writing, jobId, state, message);
      this.#unstored.delete(jobId);
    }
  }

  #report(running: Running, progress: number | null, step: JobStep | null): void {
    const moved = Math.abs((progress ?? -1) - (running.progress ?? -1)) >= 0.01;
    if (!moved && isSameStep(step, running.step)) return;
    running.progress = progress;
    running.step = step;
    this.#emit(running.id);
  }

  #move(jobId: string, state: Job['state'], message: string): void {
    setJobState(this.#host.library().writing, jobId, state, message);
    this.#unstored.delete(jobId);
    this.#emit(jobId);
  }

  #tellLine(): void {
    this.#host.emit({ name: 'lineChanged', data: {} });
  }

  #emit(jobId: string): void {
    this.#host.emit({ name: 'jobChanged', data: { job: this.#jobOf(this.#existing(jobId)) } });
  }

  #runningOf(jobId: string): Running | undefined {
    return this.#laneOf(jobId)?.running;
  }

  #laneOf(jobId: string): Lane | undefined {
    return this.#lanes.find(({ running }) => running?.id === jobId);
  }

  #nowMs(): number {
    return (this.#host.nowMs ?? performance.now.bind(performance))();
  }

  #secondsSince({ startedMs }: Running): number {
    return (this.#nowMs() - startedMs) / 1000;
  }

  /** How long a running job still takes, and the whole lane: those that wait take as long as those before them, on average. */
  #timeLeft({ name, running, tookS }: Lane): Pick<Job, 'secondsLeft' | 'lineSecondsLeft'> {
    const took = running ? this.#secondsSince(running) : 0;
    const own = secondsLeft(took, running?.progress ?? null);
    if (own === null) return { secondsLeft: null, lineSecondsLeft: null };
    const each = [...tookS, took + own].reduce((sum, one) => sum + one, 0) / (tookS.length + 1);
    const waiting = countWaitingJobs(this.#host.library().reading, name);
    return { secondsLeft: own, lineSecondsLeft: own + waiting * each };
  }

  #existing(jobId: string): JobRow {
    const job = findJob(this.#host.library().writing, jobId);
    if (!job) throw new ProblemError('not-found', 'jobGone');
    return this.#asEnded(job);
  }

  #asEnded(job: JobRow): JobRow {
    return { ...job, ...this.#unstored.get(job.id) };
  }

  #jobOf(row: JobRow): Job {
    const lane = this.#laneOf(row.id);
    const live = lane?.running;
    return {
      id: row.id,
      kind: row.kind,
      title: messageOfText(row.title),
      state: row.state,
      progress: live ? live.progress : row.state === 'done' ? 1 : null,
      message: live ? live.step : row.message === '' ? null : messageOfText(row.message),
      ...(lane ? this.#timeLeft(lane) : { secondsLeft: null, lineSecondsLeft: null }),
      sessionId: row.session_id,
      clipId: row.clip_id,
    };
  }
}

function takesLongToMeasure(task: string): boolean {
  const parsed = v.safeParse(taskSchema, JSON.parse(task));
  return parsed.success && parsed.output.do === 'measure' && parsed.output.joints;
}

const isSameStep = (one: JobStep | null, other: JobStep | null): boolean =>
  one === other || (one !== null && other !== null && textOfMessage(one) === textOfMessage(other));

/** Stores a new job and gives its id. Within a caller's transaction, the job is stored with it or not at all. */
export function insertNewJob(library: Library, { kind, title, sessionId, clipId, task, rank = 0 }: NewJob): string {
  const id = randomUUID();
  const row = { id, kind, title: textOfMessage(title), session_id: sessionId, clip_id: clipId ?? null };
  insertJob(library.writing, { ...row, task: JSON.stringify(task) }, rank);
  return id;
}
