import type { Trainee } from '../../electron/contract/trainees.ts';
import { wordsOfEquipment } from '../base/EquipmentField.tsx';
import { sayTrainee } from '../words/sayTrainee.ts';

/** What is known of a trainee, in one line. */
export function traineeWords({ experience, goal, minor, equipment }: Trainee): string {
  const facts = sayTrainee('facts', { experience, goal, age: minor ? 'minor' : 'adult' });
  return equipment === undefined
    ? facts
    : sayTrainee('factsWithEquipment', { facts, equipment: wordsOfEquipment(equipment) });
}
