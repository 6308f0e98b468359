import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Random } from '../harness/random.ts';
import type { Operation } from './trace.ts';

/**
 * What a power cut leaves: `nothing` of what was not synced, or `some`: any of the writes, whole or torn between sectors, and the
 * first of the names that each folder was given.
 */
export type Spared = 'nothing' | 'some';

/** A file or folder, whatever it is called. */
type Thing = {
  readonly isFolder: boolean;
  /** What it holds for certain, and what was written since. Known for databases alone. */
  synced: Buffer;
  since: ({ readonly at: number; readonly bytes: Buffer } | { readonly length: number })[];
  /** Of other files only whether all of it is certain; what it held in the end is read from the disk. */
  isCertain: boolean;
  readonly content: () => Buffer | null;
};

type NameChange = { readonly name: string; readonly thing: Thing | null };

const sectorBytes = 512;
/** Shared memory: it is nothing after a power cut, and made anew. */
const isMemory = (file: string): boolean => file.endsWith('-shm');
const isDatabase = (file: string): boolean => /\.sqlite(\.part)?(-wal|-journal)?$/.test(file);

/** A disk that lies to nobody and remembers no more than it must: writes until the file, names until the folder is synced. */
export class Disk {
  readonly #before: string;
  readonly #root: string;
  readonly #after: string;
  readonly #now = new Map<string, Thing>();
  readonly #certain = new Map<string, Thing>();
  readonly #pending = new Map<string, NameChange[]>();
  readonly #ends: ReadonlyMap<number, string>;
  #made = 0;

  /**
   * @param root where the run worked
   * @param before a copy of that place from before the run, which is certain
   * @param after where that place was moved to when the run had ended
   * @param ends where the things that the run made lay in the end, by the order in which they were made
   */
  constructor(
    { root, before, after }: { readonly root: string; readonly before: string; readonly after: string },
    ends: ReadonlyMap<number, string>,
  ) {
    this.#root = root;
    this.#after = after;
    this.#before = before;
    this.#ends = ends;
  }

  /** Does one operation; those outside of the place are nothing to it. */
  do(operation: Operation): void {
    const file = operation.do === 'name' ? operation.to : operation.file;
    if (!file.startsWith(`${this.#root}/`) || isMemory(file)) return;
    switch (operation.do) {
      case 'make': {
        const there = this.#thingAt(file);
        if (there === null) this.#change(file, this.#newThing(file, operation.isFolder));
        else if (operation.empties) there.isCertain = false;
        return;
      }
      case 'write':
      case 'cut': {
        const thing = this.#thingAt(file);
        if (thing === null) return;
        thing.isCertain = false;
        if (operation.do === 'cut') thing.since.push({ length: operation.length });
        else if (operation.at !== null) thing.since.push({ at: operation.at, bytes: operation.bytes });
        return;
      }
      case 'sync':
        return this.#sync(file);
      case 'name': {
        const thing = this.#thingAt(operation.from);
        if (thing === null) return;
        if (thing.isFolder) this.#moveInside(operation.from, operation.to);
        this.#change(operation.from, null);
        this.#change(operation.to, thing);
        return;
      }
      case 'remove':
        return this.#change(file, null);
    }
  }

  #newThing(file: string, isFolder: boolean): Thing {
    const end = this.#ends.get(this.#made);
    this.#made += 1;
    const last = end === undefined ? undefined : path.join(this.#after, path.relative(this.#root, end));
    const content = () =>
      last !== undefined && existsSync(last) && statSync(last).isFile() ? readFileSync(last) : null;
    return { isFolder, synced: Buffer.alloc(0), since: [], isCertain: isDatabase(file), content };
  }

  /** What a name stands for now; null for nothing. */
  #thingAt(file: string): Thing | null {
    const known = this.#now.get(file);
    if (known !== undefined) return known;
    if (this.#removed.has(file)) return null;
    const old = path.join(this.#before, path.relative(this.#root, file));
    if (!existsSync(old)) return null;
    const isFolder = statSync(old).isDirectory();
    const synced = isFolder ? Buffer.alloc(0) : readFileSync(old);
    const thing: Thing = { isFolder, synced, since: [], isCertain: true, content: () => synced };
    this.#now.set(file, thing);
    this.#certain.set(file, thing);
    return thing;
  }

  readonly #removed = new Set<string>();

  #change(file: string, thing: Thing | null): void {
    if (thing === null) {
      this.#thingAt(file);
      this.#now.delete(file);
      this.#removed.add(file);
    } else {
      this.#now.set(file, thing);
      this.#removed.delete(file);
    }
    const folder = path.dirname(file);
    this.#pending.set(folder, [...(this.#pending.get(folder) ?? []), { name: file, thing }]);
  }

  /** A folder is moved with what lies in it; what is certain in it stays so. */
  #moveInside(from: string, to: string): void {
    for (const names of [this.#now, this.#certain]) {
      for (const [name, thing] of [...names]) {
        if (!name.startsWith(`${from}/`)) continue;
        names.delete(name);
        names.set(to + name.slice(from.length), thing);
      }
    }
    for (const [folder, changes] of [...this.#pending]) {
      if (folder !== from && !folder.startsWith(`${from}/`)) continue;
      this.#pending.delete(folder);
      const moved = changes.map(({ name, thing }) => ({ name: to + name.slice(from.length), thing }));
      this.#pending.set(to + folder.slice(from.length), moved);
    }
  }

  #sync(file: string): void {
    const thing = this.#thingAt(file);
    for (const { name, thing: named } of this.#pending.get(file) ?? []) {
      if (named === null) this.#certain.delete(name);
      else this.#certain.set(name, named);
      if (named === null) this.#gone.add(name);
      else this.#gone.delete(name);
    }
    this.#pending.delete(file);
    if (thing === null || thing.isFolder) return;
    thing.synced = applied(thing.synced, thing.since);
    thing.since = [];
    thing.isCertain = true;
  }

  readonly #gone = new Set<string>();

  /** Lays out what is there after a power cut at this moment, in a new folder. */
  leave(target: string, spared: Spared, random: Random): void {
    cpSync(this.#before, target, { recursive: true });
    const names = new Map<string, Thing | null>(this.#certain);
    for (const name of this.#gone) names.set(name, null);
    if (spared === 'some') {
      for (const changes of this.#pending.values()) {
        for (const { name, thing } of changes.slice(0, random.below(changes.length + 1))) names.set(name, thing);
      }
    }
    const inOrder = [...names].sort(([one], [other]) => one.length - other.length);
    for (const [name, thing] of inOrder) {
      const place = path.join(target, path.relative(this.#root, name));
      if (thing === null) rmSync(place, { recursive: true, force: true });
      else if (!existsSync(path.dirname(place))) continue;
      else if (thing.isFolder) mkdirSync(place, { recursive: true });
      else writeFileSync(place, left(name, thing, spared, random));
    }
  }
}

/** What a file holds after the power cut. */
function left(name: string, thing: Thing, spared: Spared, random: Random): Buffer {
  if (isDatabase(name)) {
    if (spared === 'nothing') return thing.synced;
    const kept = thing.since.filter(() => random.below(2) === 0);
    return applied(
      thing.synced,
      kept.flatMap((change) => ('bytes' in change ? torn(change, random) : [change])),
    );
  }
  const whole = thing.content() ?? Buffer.alloc(0);
  if (thing.isCertain) return whole;
  return spared === 'nothing' ? Buffer.alloc(0) : whole.subarray(0, random.below(whole.length + 1));
}

type Change = Thing['since'][number];

/** A write as the sectors of it that arrived. */
function torn({ at, bytes }: { readonly at: number; readonly bytes: Buffer }, random: Random): Change[] {
  if (random.below(3) > 0) return [{ at, bytes }];
  const sectors: Change[] = [];
  for (let from = 0; from < bytes.length; from += sectorBytes) {
    if (random.below(2) === 0) sectors.push({ at: at + from, bytes: bytes.subarray(from, from + sectorBytes) });
  }
  return sectors;
}

function applied(content: Buffer, changes: readonly Change[]): Buffer {
  let result = Buffer.from(content);
  for (const change of changes) {
    if ('length' in change) {
      const cut = Buffer.alloc(change.length);
      result.copy(cut);
      result = cut;
      continue;
    }
    const end = change.at + change.bytes.length;
    if (end > result.length) result = Buffer.concat([result, Buffer.alloc(end - result.length)]);
    change.bytes.copy(result, change.at);
  }
  return result;
}

/** Where the things that a run made lay in the end, by the order in which they were made. */
export function endsOf(operations: readonly Operation[], root: string, before: string): Map<number, string> {
  const names = new Map<string, number>();
  const isThere = (file: string): boolean =>
    names.has(file) || existsSync(path.join(before, path.relative(root, file)));
  const removed = new Set<string>();
  let made = 0;
  for (const operation of operations) {
    if (operation.do === 'name') {
      for (const [name, thing] of [...names]) {
        if (name !== operation.from && !name.startsWith(`${operation.from}/`)) continue;
        names.delete(name);
        names.set(operation.to + name.slice(operation.from.length), thing);
      }
      continue;
    }
    const { file } = operation;
    if (!file.startsWith(`${root}/`) || isMemory(file)) continue;
    if (operation.do === 'make' && (!isThere(file) || removed.has(file))) {
      removed.delete(file);
      names.set(file, made);
      made += 1;
    }
    if (operation.do === 'remove') {
      names.delete(file);
      removed.add(file);
    }
  }
  return new Map([...names].map(([name, thing]) => [thing, name]));
}
