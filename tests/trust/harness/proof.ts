import type { Random } from './random.ts';
import type { SeedLibrary } from './seedLibrary.ts';

/** What a proof is run with. */
export type Order = {
  /** Whole, or the part that is short enough for every run. */
  readonly long: boolean;
  /** Begins anew for each proof, so that a proof does the same alone as among others. */
  readonly random: Random;
  /** A folder of the proof's own, removed afterwards. */
  readonly folder: string;
  /** A closed library with something in most of its tables, the same for every proof: to be copied, never changed. */
  readonly seedLibrary: () => Promise<SeedLibrary>;
  readonly progress: (done: number, of: number) => void;
  /** The time that was given is up: what was tried until now is told as it is. */
  readonly isOver: () => boolean;
};

/** One line of the table. */
export type Figure = {
  readonly what: string;
  /** How often it was tried. */
  readonly tried: number;
  /** What came of it, in figures. */
  readonly found: string;
  /** What must never be, each with what is needed to see it again; empty when the proof holds. */
  readonly wrong: readonly string[];
};

/** Something that people have to be able to rely on, tried until it would have shown. */
export type Proof = {
  readonly name: string;
  readonly run: (order: Order) => Promise<readonly Figure[]>;
};

/** Thrown where a machine lacks what a proof needs: it is told in the table, never taken for a success. */
export class NotHere extends Error {}
