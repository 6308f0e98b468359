import { type FSWatcher, watch } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { Context } from '../context/context.ts';
import { errorFacts, type Log } from '../log/log.ts';
import { cameBefore } from '../store/arrivals.ts';
import { readSettings } from '../store/settings.ts';
import { type FoundFilm, findFilms } from './findFilms.ts';
import { takeFilms } from './takeFilms.ts';

/** How long what is waited for, in milliseconds. */
export type WatchTimes = {
  /** A file that has not changed for so long is whole. */
  readonly settleMs: number;
  /** Changes that come close after one another are looked at together. */
  readonly gatherMs: number;
  /** Network drives tell of no change: once in so long the folder is looked through without being told. */
  readonly rescanMs: number;
  /** A folder that is gone is looked for again after so long. */
  readonly returnMs: number;
};

const usualTimes: WatchTimes = { settleMs: 3_000, gatherMs: 1_000, rescanMs: 300_000, returnMs: 20_000 };

type Host = Pick<Context, 'emit' | 'jobs' | 'library'> & { readonly log: () => Log };

/** The folder that is watched, and whether it is there. */
export type Watched = { readonly folder: string; readonly there: boolean };

/**
 * Takes the films of one folder into the inbox as they appear, each once, when it is no longer being written. It waits to be
 * told of changes and looks through the folder only then, and rarely besides.
 */
export class FolderWatch {
  readonly #host: Host;
  readonly #times: WatchTimes;
  #folder: string | null = null;
  #there = true;
  #watcher: FSWatcher | null = null;
  #timer: { readonly at: number; readonly handle: NodeJS.Timeout } | null = null;
  #looking: Promise<void> | null = null;
  /** Files as they were when they were last looked at, and since when they are so. */
  #seen = new Map<string, { readonly state: string; readonly sinceMs: number }>();
  #closed = false;

  constructor(host: Host, times: WatchTimes = usualTimes) {
    this.#host = host;
    this.#times = times;
  }

  /** Watches the folder that is set now; none where none is set. */
  follow(): void {
    const { watchedFolder } = readSettings(this.#host.library().reading);
    if (this.#closed || watchedFolder === this.#folder) return;
    this.#stopWatching();
    this.#folder = watchedFolder;
    this.#there = true;
    this.#seen = new Map();
    if (watchedFolder !== null) this.#lookIn(0);
  }

  /** What is watched; null = nothing. */
  watched(): Watched | null {
    return this.#folder === null ? null : { folder: this.#folder, there: this.#there };
  }

  /** Stops watching; resolves when nothing is looked at any more. */
  async close(): Promise<void> {
    this.#closed = true;
    this.#stopWatching();
    await this.#looking;
  }

  #stopWatching(): void {
    this.#watcher?.close();
    this.#watcher = null;
    if (this.#timer !== null) clearTimeout(this.#timer.handle);
    this.#timer = null;
  }

  /** Sees that the folder is looked through after a while, unless that happens sooner anyway. */
  #lookIn(ms: number): void {
    const at = performance.now() + ms;
    if (this.#closed || (this.#timer !== null && this.#timer.at <= at)) return;
    if (this.#timer !== null) clearTimeout(this.#timer.handle);
    const handle = setTimeout(() => {
      this.#timer = null;
      this.#looking = this.#look().catch((error: unknown) => {
        this.#host.log().error('the watched folder was not looked through', errorFacts(error));
        this.#lookIn(this.#times.rescanMs);
      });
    }, ms);
    handle.unref();
    this.#timer = { at, handle };
  }

  async #look(): Promise<void> {
    const folder = this.#folder;
    if (folder === null) return;
    const place = await stat(folder).catch(() => null);
    const there = place?.isDirectory() === true;
    if (folder !== this.#folder || this.#closed) return;
    if (there !== this.#there) {
      this.#there = there;
      this.#host.emit({ name: 'inboxChanged', data: {} });
    }
    if (!there) {
      this.#watcher?.close();
      this.#watcher = null;
      return this.#lookIn(this.#times.returnMs);
    }
    this.#watcher ??= this.#watch(folder);
    const { root } = this.#host.library().folder;
    const { films } = await findFilms([folder], { except: root });
    if (folder !== this.#folder || this.#closed) return;
    const { reading } = this.#host.library();
    const fresh = films.filter((film) => !cameBefore(reading, film, 'everywhere'));
    const whole = this.#settled(fresh);
    takeFilms(this.#host, whole, 'everywhere');
    this.#lookIn(whole.length < fresh.length ? this.#times.settleMs : this.#times.rescanMs);
  }

  /** The files that have not changed for a while; the others are kept in mind. */
  #settled(films: readonly FoundFilm[]): readonly FoundFilm[] {
    const nowMs = performance.now();
    const seen = new Map(
      films.map(({ path, sizeBytes, modifiedMs }) => {
        const state = `${sizeBytes} ${modifiedMs}`;
        const before = this.#seen.get(path);
        return [path, before?.state === state ? before : { state, sinceMs: nowMs }];
      }),
    );
    this.#seen = seen;
    return films.filter(
      ({ path, sizeBytes }) => sizeBytes > 0 && nowMs - (seen.get(path)?.sinceMs ?? nowMs) >= this.#times.settleMs,
    );
  }

  #watch(folder: string): FSWatcher | null {
    try {
      const watcher = watch(folder, { recursive: true }, () => this.#lookIn(this.#times.gatherMs));
      watcher.on('error', () => {
        watcher.close();
        if (this.#watcher === watcher) this.#watcher = null;
        this.#lookIn(this.#times.gatherMs);
      });
      return watcher.unref();
    } catch {
      // Some drives can't be watched; they are looked through once in a while.
      return null;
    }
  }
}
