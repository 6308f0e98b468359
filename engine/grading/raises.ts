import type { FaultGroup } from './faultGroups.ts';
import type { GroupRaise, Raise, StopsRaise } from './grade.ts';

/** A group with the entry that it lies in. */
export type GroupOfEntry = { readonly entryId: string; readonly group: FaultGroup };

const inOrder = (ids: Iterable<string>): string[] => [...new Set(ids)].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));

const flagIdsOf = (groups: readonly GroupOfEntry[]): string[] =>
  inOrder(groups.flatMap(({ group }) => [...group.flags].map((flag) => flag.id)));

function announceGroup({ entryId, group }: GroupOfEntry, gain: number): GroupRaise {
  const { criterion, fault, severity, touched } = group;
  const flagIds = flagIdsOf([{ entryId, group }]);
  return { kind: 'group', entryId, entryIds: [entryId], criterion, fault, severity, flagIds, reps: touched.size, gain };
}

function announceStops(groups: readonly GroupOfEntry[], gain: number): StopsRaise {
  return {
    kind: 'stops',
    entryIds: [...new Set(groups.map(({ entryId }) => entryId))],
    severity: 'stop',
    flagIds: flagIdsOf(groups),
    groups: groups.length,
    reps: groups.reduce((sum, { group }) => sum + group.touched.size, 0),
    gain,
  };
}

/**
 * Every group as the grade announces it, several groups of stop flags as one: while any of them stands, the cap holds.
 * `gainOf` gives what would be gained without some groups.
 */
export function announce(
  groups: readonly GroupOfEntry[],
  gainOf: (gone: readonly GroupOfEntry[]) => number,
): (GroupRaise | StopsRaise)[] {
  const stops = groups.filter(({ group }) => group.severity === 'stop');
  if (stops.length < 2) return groups.map((one) => announceGroup(one, gainOf([one])));
  const others = groups.filter(({ group }) => group.severity !== 'stop');
  return [announceStops(stops, gainOf(stops)), ...others.map((one) => announceGroup(one, gainOf([one])))];
}

/** Largest gain first; equal gains keep the order they came in. */
export const largestFirst = <R extends Raise>(raises: readonly R[]): R[] => raises.toSorted((a, b) => b.gain - a.gain);
