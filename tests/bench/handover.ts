import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { renderAnnotatedClip } from '../../electron/backend/handover/render/clips/annotatedClip.ts';
import { pictureWords, renderStills } from '../../electron/backend/handover/render/pictures/stills.ts';
import { findMediaTools } from '../../electron/backend/media/tools/mediaTools.ts';
import { measuredClip, noteAt } from '../electron/backend/handover/shownClip.ts';
import { type Bench, median, timed } from './bench.ts';

const run = promisify(execFile);
const rounds = 5;
const flags = 20;

/** The stills of a letter against ffmpeg alone taking the same frames out; burning a clip against encoding it anew. */
export const benchHandover: Bench = {
  name: 'handover',
  about: `${flags} stills with everything drawn over them, and an annotated clip`,
  run: async () => {
    const tools = await findMediaTools();
    const clip = await measuredClip('squat-side');
    const words = 'The hip crease stays above the top of the knee. Sit between your heels until the thighs are level.';
    const spacing = Math.floor(clip.table.ticks.length / flags);
    const notes = Array.from({ length: flags }, (_, place) => noteAt(place * spacing + 5, { words }));
    const folder = mkdtempSync(path.join(tmpdir(), 'rackside-bench-'));
    const alone = (...args: readonly string[]) =>
      run(tools.ffmpeg.path, ['-v', 'error', '-nostdin', '-y', '-i', clip.file, ...args]);
    const chosen = notes.map(({ frame }) => `eq(n\\,${frame})`).join('+');
    const times: Record<'stills' | 'bareStills' | 'clip' | 'bareClip', number[]> = {
      ...{ stills: [], bareStills: [], clip: [], bareClip: [] },
    };
    try {
      for (let round = 0; round < rounds; round += 1) {
        const still = path.join(folder, 'still-%d.jpg');
        times.bareStills.push(
          await timed(() => alone('-vf', `select=${chosen}`, '-vsync', 'passthrough', '-q:v', '3', still)),
        );
        times.stills.push(await timed(() => renderStills(tools, clip, notes, { words: pictureWords('en') })));
        const encoded = path.join(folder, 'encoded.mp4');
        const encoding = ['-c:v', 'libx264', '-preset', 'veryfast', '-profile:v', 'high', '-crf', '19'];
        times.bareClip.push(await timed(() => alone(...encoding, encoded)));
        const options = {
          notes,
          words: pictureWords('en'),
          card: null,
          sound: 'kept',
          atNotes: { do: 'playOn' },
        } as const;
        const burned = path.join(folder, 'burned.mp4');
        times.clip.push(await timed(() => renderAnnotatedClip(tools, clip, burned, options)));
      }
      if (readdirSync(folder).length !== flags + 2) throw new Error('ffmpeg alone did not write every still.');
    } finally {
      rmSync(folder, { recursive: true });
    }
    return [
      { what: `${flags} stills / ffmpeg alone`, ratio: median(times.stills) / median(times.bareStills), goal: 3 },
      {
        what: 'an annotated clip without freezes / encoding it anew',
        ratio: median(times.clip) / median(times.bareClip),
        goal: 3,
      },
    ];
  },
};
