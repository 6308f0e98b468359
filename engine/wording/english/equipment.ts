import type { EquipmentItem, Place } from '../../exercises/equipment.ts';

/** Usual places to train, as one writes them in a field or after "at hand:", and things that are found there. */
export const equipment: Readonly<Record<Place | EquipmentItem, string>> = {
  home: 'at home, without weights',
  homeWithDumbbells: 'at home, with dumbbells and a bench',
  park: 'in the park, with bars',
  barAndBench: 'barbell, rack and bench',
  fullGym: 'a full gym',
  barbell: 'barbell',
  rack: 'rack',
  bench: 'bench',
  dumbbells: 'dumbbells',
  kettlebell: 'kettlebell',
  cable: 'cable stack',
  machine: 'machines',
  guidedRail: 'guided rail',
  pullUpBar: 'pull-up bar',
  dipBars: 'dip bars',
  rings: 'rings',
  lowBar: 'low bar',
  band: 'bands',
  box: 'box or step',
  wall: 'wall',
  wheel: 'roll-out wheel',
  trapBar: 'trap bar',
  preacherBench: 'preacher bench',
  backExtensionBench: 'back extension bench',
  sled: 'sled press',
  partner: 'a partner',
};

export type EquipmentMessageId = keyof typeof equipment;
