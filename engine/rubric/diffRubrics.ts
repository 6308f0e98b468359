import type { Rubric } from './rubric.ts';

/** One value that differs: its path ("cost.adjust", "criteria.depth.anchors.stop"), and what it is on each side. */
export type RubricDifference = { readonly path: string; readonly from: string | null; readonly to: string | null };

type Leaves = ReadonlyMap<string, string>;

/** Criteria and letters are known by their name, so that their order alone is no difference. */
const keyOf = (value: unknown, index: number): string => {
  if (typeof value !== 'object' || value === null) return String(index);
  if ('id' in value) return String(value.id);
  return 'letter' in value ? String(value.letter) : String(index);
};

function leavesOf(value: unknown, path = ''): [string, string][] {
  const below = (key: string, inner: unknown) => leavesOf(inner, path === '' ? key : `${path}.${key}`);
  if (Array.isArray(value)) return value.flatMap((inner, index) => below(keyOf(inner, index), inner));
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value).flatMap(([key, inner]) => below(key, inner));
  }
  return [[path, String(value)]];
}

/** Every value in which two rubrics differ, in the order of the first, then what only the second has. */
export function diffRubrics(from: Rubric, to: Rubric): RubricDifference[] {
  const before: Leaves = new Map(leavesOf(from));
  const after: Leaves = new Map(leavesOf(to));
  return [...new Set([...before.keys(), ...after.keys()])]
    .map((path) => ({ path, from: before.get(path) ?? null, to: after.get(path) ?? null }))
    .filter((one) => one.from !== one.to);
}
