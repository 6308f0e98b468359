import type { JudgingFlag } from '../review/parts.ts';
import type { Flag } from '../review/review.ts';
import { severities } from '../rubric/rubric.ts';
import type { JudgedCriterion, JudgedEntry, LeftAside } from './judge.ts';

/** Flags of one entry with the same criterion, fault and severity: what a trainee would fix as one thing. */
export type FaultGroup = LeftAside & { readonly fault: string | null };

const keyOf = ({ fault, severity }: JudgingFlag): string => JSON.stringify([fault, severity]);

type Draft = FaultGroup & { readonly flags: Set<Flag>; readonly touched: Set<number> };

/** The groups of one criterion, found by going over its units once. */
function groupsOf({ criterion, units }: JudgedCriterion): FaultGroup[] {
  const groups = new Map<string, Draft>();
  units.forEach(({ flags }, index) => {
    for (const flag of flags) {
      if (flag.severity === 'keep') continue;
      const key = keyOf(flag);
      const group = groups.get(key) ?? {
        criterion,
        fault: flag.fault,
        severity: flag.severity,
        flags: new Set(),
        touched: new Set(),
      };
      groups.set(key, group);
      group.flags.add(flag);
      group.touched.add(index);
    }
  });
  return [...groups.values()].sort(bySeverityThenFault);
}

/** The groups of corrective flags of an entry: criteria as the exercise lists them, heaviest first, then by fault. */
export const faultGroups = (judged: JudgedEntry): FaultGroup[] => judged.criteria.flatMap(groupsOf);

function bySeverityThenFault(a: FaultGroup, b: FaultGroup): number {
  const heavier = severities.indexOf(b.severity) - severities.indexOf(a.severity);
  if (heavier !== 0) return heavier;
  const [one, other] = [a.fault ?? '', b.fault ?? ''];
  return one < other ? -1 : one > other ? 1 : 0;
}
