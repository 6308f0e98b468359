import type { Flag } from '../review/index.ts';
import { type CriterionId, type Weight, weights } from '../rubric/index.ts';
import type { Raise } from './grade.ts';
import type { JudgedEntry } from './judge.ts';

/** Flags of one entry with the same criterion, fault and weight: what a trainee would fix as one thing. */
export type FaultGroup = {
  readonly criterion: CriterionId;
  readonly fault: string | null;
  readonly weight: Weight;
  readonly flags: ReadonlySet<Flag>;
  /** Units (reps, or sets without marked reps) the group touches. */
  readonly reps: number;
};

const keyOf = ({ criterion, fault, weight }: Flag): string => JSON.stringify([criterion, fault, weight]);

/** The groups of corrective flags of an entry: criteria as the exercise lists them, heaviest first, then by fault. */
export function faultGroups(judged: JudgedEntry): FaultGroup[] {
  return judged.criteria.flatMap(({ criterion, units }) => {
    const flags = judged.entry.flags.filter((flag) => flag.criterion === criterion && flag.weight !== 'keep');
    const groups = [...Map.groupBy(flags, keyOf).values()].flatMap((members): FaultGroup[] => {
      const [first] = members;
      if (first === undefined) return [];
      const set = new Set(members);
      const reps = units.filter((unit) => unit.flags.some((flag) => set.has(flag))).length;
      return [{ criterion, fault: first.fault, weight: first.weight, flags: set, reps }];
    });
    return groups.sort(byWeightThenFault);
  });
}

function byWeightThenFault(a: FaultGroup, b: FaultGroup): number {
  const heavier = weights.indexOf(b.weight) - weights.indexOf(a.weight);
  if (heavier !== 0) return heavier;
  const [one, other] = [a.fault ?? '', b.fault ?? ''];
  return one < other ? -1 : one > other ? 1 : 0;
}

/** A group as the grade announces it. */
export function announce(group: FaultGroup, entryId: string, gain: number): Raise {
  const { criterion, fault, weight, flags, reps } = group;
  const flagIds = [...flags].map((flag) => flag.id).sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  return { entryId, criterion, fault, weight, flagIds, reps, gain };
}

/** Largest gain first; equal gains keep the order they came in. */
export const largestFirst = (raises: readonly Raise[]): Raise[] => [...raises].sort((a, b) => b.gain - a.gain);
