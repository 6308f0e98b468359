import { ask } from '../harness/ask.ts';
import { type BackendChild, Gone } from '../harness/backendChild.ts';
import type { Random } from '../harness/random.ts';
import type { SeedLibrary } from '../harness/seedLibrary.ts';

/** What a session says, as far as these acts change it: a line a flag, in order, and the session's notes. */
export type Said = { readonly flags: readonly string[]; readonly notes: string };

const lineOf = (note: string, severity: string | null, frame: number): string => `${note} | ${severity} | ${frame}`;
const isSame = (one: Said, other: Said): boolean => JSON.stringify(one) === JSON.stringify(other);

/**
 * What the library has to say of one session: every act that was acknowledged, and of the one that was under way when the
 * process ended either all or nothing.
 */
export class JudgedSession {
  readonly #seed: SeedLibrary;
  #states: Said[] = [];
  #at = 0;
  #ids = new Map<string, string>();
  #underWay: { readonly states: Said[]; readonly at: number } | null = null;
  #count = 0;
  #waiting: (() => void)[] = [];
  acknowledged = 0;

  constructor(seed: SeedLibrary) {
    this.#seed = seed;
  }

  async #read(child: BackendChild): Promise<Said> {
    const { review } = await ask(child, 'review.get', { sessionId: this.#seed.sessionId });
    const flags = review.entries.flatMap((entry) => entry.flags);
    this.#ids = new Map(
      flags.map(({ id, note, severity, at }) => [lineOf(note, severity, 'frame' in at ? at.frame : -1), id]),
    );
    return { flags: [...this.#ids.keys()].sort(), notes: review.session.notes ?? '' };
  }

  /** Compares; gives a sentence where an act is missing, or something is there that nobody did. */
  async check(child: BackendChild): Promise<string | null> {
    const found = await this.#read(child);
    const known = this.#states[this.#at];
    if (known === undefined) {
      this.#states = [found];
      return null;
    }
    const underWay = this.#underWay;
    this.#underWay = null;
    if (isSame(found, known)) return null;
    const next = underWay?.states[underWay.at];
    if (underWay !== null && next !== undefined && isSame(found, next)) {
      this.#states = underWay.states;
      this.#at = underWay.at;
      return null;
    }
    this.#states = [found];
    this.#at = 0;
    return `expected ${JSON.stringify(known)}, found ${JSON.stringify(found)}`;
  }

  /** Resolves with the first act that is acknowledged from now on, or with the end of the work. */
  firstOf(working: Promise<void>): Promise<void> {
    return Promise.race([working, new Promise<void>((resolve) => this.#waiting.push(resolve))]);
  }

  /** Does one act after the other until the process is ended. */
  async workUntilKilled(child: BackendChild, random: Random): Promise<void> {
    try {
      for (;;) await this.#act(child, random);
    } catch (error) {
      if (!(error instanceof Gone)) throw error;
    }
  }

  async #act(child: BackendChild, random: Random): Promise<unknown> {
    const now = this.#states[this.#at];
    if (now === undefined) throw new Error('The session was not read before it was worked on.');
    const { sessionId, clipId } = this.#seed;
    this.#count += 1;
    const choice = random.below(10);
    const line = now.flags.length === 0 ? '' : random.oneOf(now.flags);
    const flagId = this.#ids.get(line) ?? '';
    if (choice === 0 && this.#at > 0) {
      return this.#go(this.#states, this.#at - 1, () => ask(child, 'history.undo', { sessionId }));
    }
    if (choice === 1 && this.#at < this.#states.length - 1) {
      return this.#go(this.#states, this.#at + 1, () => ask(child, 'history.redo', { sessionId }));
    }
    if (choice === 2) {
      const notes = `Notes ${this.#count} ${'x'.repeat(random.below(1900))}`;
      return this.#to({ ...now, notes }, () => ask(child, 'sessions.update', { sessionId, notes }));
    }
    if (flagId !== '' && (choice === 3 || now.flags.length > 40)) {
      const flags = now.flags.filter((each) => each !== line);
      return this.#to({ ...now, flags }, () => ask(child, 'flags.remove', { flagId }));
    }
    const flag = {
      note: `Note ${this.#count}`,
      severity: random.oneOf(['keep', 'adjust', 'correct'] as const),
      frame: random.below(40),
    };
    const said = lineOf(flag.note, flag.severity, flag.frame);
    if (flagId !== '' && choice === 4) {
      const flags = [...now.flags.filter((each) => each !== line), said].sort();
      await this.#to({ ...now, flags }, () => ask(child, 'flags.update', { flagId, change: flag }));
      return this.#ids.set(said, flagId);
    }
    const added = await this.#to({ ...now, flags: [...now.flags, said].sort() }, () =>
      ask(child, 'flags.add', { clipId, criterion: 'depth', reps: 'set', ...flag }),
    );
    return this.#ids.set(said, added.flagId);
  }

  #to<T>(said: Said, act: () => Promise<T>): Promise<T> {
    return this.#go([...this.#states.slice(0, this.#at + 1), said], this.#at + 1, act);
  }

  async #go<T>(states: Said[], at: number, act: () => Promise<T>): Promise<T> {
    this.#underWay = { states, at };
    const answer = await act();
    this.#underWay = null;
    this.#states = states;
    this.#at = at;
    this.acknowledged += 1;
    for (const resolve of this.#waiting.splice(0)) resolve();
    return answer;
  }
}
