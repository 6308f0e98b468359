import type { Unseen } from '../measurement.ts';
import { isRead, type Reading } from './posture.ts';

/** Each joint that can't be seen, with what can't be known because of it. */
export function unseenOf(readings: Readonly<Record<Unseen['lost'][number], Reading>>): Unseen[] {
  const found = new Map<string, Unseen>();
  for (const asked of ['knee', 'hip', 'trunkLean', 'head'] as const) {
    const reading = readings[asked];
    if (isRead(reading)) continue;
    const { part, why } = reading;
    const key = `${part} ${why}`;
    found.set(key, { part, why, lost: [...(found.get(key)?.lost ?? []), asked] });
  }
  return [...found.values()];
}
