import { writeFile } from 'node:fs/promises';
import path from 'node:path';

type Flag = { criterion: string; severity: string; reps: 'set' | number[]; fault?: string | null };

const criteria = ['depth', 'eccentricTempo', 'pauses', 'barPath', 'headPosition', 'spinePosition'];

/** A hand-written review of one set of back squats, side view, everything looked at; media elsewhere. */
export function squatReview(flags: readonly Flag[], reps = 5, ticked = criteria): Record<string, unknown> {
  return {
    format: 'rackside-review',
    version: 4,
    trainee: { name: 'Alva Brook' },
    session: { date: '2026-03-01' },
    entries: [
      {
        id: 'squat',
        exercise: 'back-squat',
        clips: [
          {
            id: 'a',
            name: 'Set 1',
            view: 'side',
            reps: Array.from({ length: reps }, (_, rep) => ({ index: rep + 1, start: { seconds: (rep + 1) * 4 } })),
          },
        ],
        flags: flags.map((flag) => ({ clip: 'a', at: { seconds: 5 }, ...flag })),
        ticks: ticked.map((criterion) => ({ clip: 'a', criterion, reps: 'set' })),
      },
    ],
  };
}

export async function writeJson(folder: string, name: string, content: unknown): Promise<string> {
  const file = path.join(folder, name);
  await writeFile(file, typeof content === 'string' ? content : JSON.stringify(content));
  return file;
}
