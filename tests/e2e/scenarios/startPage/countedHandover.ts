import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { run } from '../../../electron/cli/runCommand.ts';
import { type CountedClip, makeCountedClip, numberOf } from '../../harness/countedClip.ts';

/** A handover of clips whose frames carry their numbers. */
export type CountedHandover = { readonly address: string; readonly clips: readonly CountedClip[] };

/** The first, one soon after, and one of the last. */
export const flaggedFrames = [0, 8, 51] as const;

const frames = 60;
export const film: CountedClip = { name: '23.976', rate: '24000/1001', frames, leaveOut: 0, turned: 'no' };
export const phone: CountedClip = { name: '29.97', rate: '30000/1001', frames, leaveOut: 0, turned: 'no' };
export const variable: CountedClip = { name: 'variable', rate: '30', frames, leaveOut: 3, turned: 'no' };

/** Hands over clips whose frame times are no round numbers, with notes on known frames. */
export async function handOverCounted(
  folder: string,
  clips: readonly CountedClip[],
  options: readonly string[],
): Promise<CountedHandover> {
  await mkdir(folder, { recursive: true });
  for (const clip of clips) await makeCountedClip(clip, path.join(folder, `${clip.name}.mp4`));
  const file = path.join(folder, 'review.json');
  await writeFile(
    file,
    JSON.stringify({
      format: 'rackside-review',
      version: 4,
      trainee: { name: 'Alva Brook' },
      session: { date: '2026-03-01' },
      entries: [
        {
          id: 'squat',
          exercise: 'back-squat',
          clips: clips.map(({ name }) => ({ id: name, name: `Set ${name}`, path: `${name}.mp4`, view: 'side' })),
          flags: clips.flatMap((clip) =>
            flaggedFrames.map((frame) => ({
              ...{ clip: clip.name, criterion: 'depth', severity: 'adjust', reps: 'set', note: `Frame ${frame}.` },
              at: { seconds: timeWithin(frame, clip) },
            })),
          ),
        },
      ],
    }),
  );
  const { code, stdout, stderr } = await run(['handover', file, '--out', path.join(folder, 'out'), ...options]);
  if (code !== 0) throw new Error(`handover ended with ${code}: ${stderr}`);
  return { address: pathToFileURL(path.join(stdout.trim(), 'index.html')).href, clips };
}

/** A time at which a frame is on screen, a little after it appears; the first appears at 0, whatever its number. */
function timeWithin(frame: number, clip: CountedClip): number {
  const [numerator = 1, denominator = 1] = clip.rate.split('/').map(Number);
  return ((numberOf(frame, clip) - numberOf(0, clip) + 0.3) * denominator) / numerator;
}
