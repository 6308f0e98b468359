import * as v from 'valibot';

/** What an exercise can need besides a floor and the lifter's own weight. */
export const equipmentItems = [
  'barbell',
  'rack',
  'bench',
  'dumbbells',
  'kettlebell',
  'cable',
  'machine',
  'guidedRail',
  'pullUpBar',
  'dipBars',
  'rings',
  'lowBar',
  'band',
  'box',
  'wall',
  'wheel',
  'trapBar',
  'preacherBench',
  'backExtensionBench',
  'sled',
  'partner',
] as const;
export const equipmentItemSchema = v.picklist(equipmentItems);
export type EquipmentItem = v.InferOutput<typeof equipmentItemSchema>;

/** Usual places to train, each with what is found there; `other` names the items one by one. */
export const places = ['home', 'homeWithDumbbells', 'park', 'barAndBench', 'fullGym'] as const;
export const placeSchema = v.picklist(places);
export type Place = v.InferOutput<typeof placeSchema>;

/** What can be used: a usual place to train, or a list of items. */
export const equipmentSchema = v.union([placeSchema, v.pipe(v.array(equipmentItemSchema), v.maxLength(50))]);
export type Equipment = v.InferOutput<typeof equipmentSchema>;

const atPlace: Readonly<Record<Place, readonly EquipmentItem[]>> = {
  home: ['band', 'box', 'wall', 'partner'],
  homeWithDumbbells: ['band', 'box', 'wall', 'partner', 'dumbbells', 'bench'],
  park: ['pullUpBar', 'dipBars', 'lowBar', 'band', 'box', 'wall', 'partner'],
  barAndBench: ['barbell', 'rack', 'bench', 'band', 'box', 'wall', 'partner', 'lowBar'],
  fullGym: equipmentItems,
};

/** Whether two statements mean the same items, however they name them. */
export function isSameEquipment(one: Equipment, other: Equipment): boolean {
  const [items, others] = [itemsOf(one), itemsOf(other)];
  return items.size === others.size && [...items].every((item) => others.has(item));
}

/** The items of a place or of a list. */
export const itemsOf = (equipment: Equipment): ReadonlySet<EquipmentItem> =>
  new Set(typeof equipment === 'string' ? atPlace[equipment] : equipment);

/** Whether all that an exercise needs is at hand; where nothing is stated, everything is. */
export function isAtHand(
  { needs = [] }: { readonly needs?: readonly EquipmentItem[] | undefined },
  equipment: Equipment | null,
): boolean {
  if (equipment === null) return true;
  const items = itemsOf(equipment);
  return needs.every((item) => items.has(item));
}

/** What nobody builds at home: with it, the place is a gym. */
const ofGyms: readonly EquipmentItem[] = ['machine', 'cable', 'sled', 'guidedRail'];

/**
 * Whether some of what there is to train with may be home-made: at home, or where a list of items names nothing that
 * only a gym has. Not where nothing is stated, in a park or in a gym.
 */
export function mayBeHomeMade(equipment: Equipment | null): boolean {
  if (equipment === null || equipment === 'park') return false;
  const items = itemsOf(equipment);
  return !ofGyms.some((item) => items.has(item));
}
