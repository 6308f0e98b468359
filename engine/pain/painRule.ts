import type { Exercise } from '../exercises/exercise.ts';
import type { BodyArea } from './bodyAreas.ts';
import { loadedAreas } from './loadedAreas.ts';
import type { PainReading } from './painNote.ts';

/**
 * What pain asks of the lifts that load the area: nothing; rest until it has settled by the next morning; leave them out and
 * see a clinician.
 */
export type PainStep = 'none' | 'settle' | 'stop';

/** Above this, on the scale from 0 to 10, a lift is stopped (pain-monitoring model, Thomeé 1997, from memory). */
const mostToSettle = 5;

/** What a reading asks for. Pain without a number counts as one that has to settle. */
export function painStep(reading: PainReading): PainStep {
  if (reading.kind === 'none') return 'none';
  const { level, rising, nerveSigns, redFlag } = reading;
  const stops = rising || nerveSigns || redFlag !== 'none' || (level !== null && level > mostToSettle);
  return stops ? 'stop' : 'settle';
}

/** Up to this, training goes on with care (pain-monitoring model, Thomeé 1997, from memory). */
const mostToCarryOn = 2;

/** Whether pain is stated, not sharp, and low enough to go on with care once it is known and cleared. */
export const isMild = (reading: PainReading): boolean =>
  painStep(reading) === 'settle' &&
  reading.kind === 'pain' &&
  !reading.sharp &&
  reading.level !== null &&
  reading.level <= mostToCarryOn;

/** Whether pain was mild and gone again within the session: it holds nothing back. */
export const isOver = (reading: PainReading): boolean => isMild(reading) && reading.kind === 'pain' && reading.settled;

/** Whether a reading keeps a trainee from pushing an exercise; one that the library doesn't hold may load anything. */
export function isHeldByPain(reading: PainReading, exercise: Exercise | undefined): boolean {
  if (reading.kind === 'none' || isOver(reading)) return false;
  const { areas } = reading;
  if (areas === 'all' || exercise === undefined) return true;
  const loaded = loadedAreas(exercise);
  return [...areas].some((area: BodyArea) => loaded.has(area));
}
