import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBackend } from '../../../../../electron/backend/backend.ts';
import type { Backend } from '../../../../../electron/contract/backend.ts';
import type { Params } from '../../../../../electron/contract/requests.ts';
import { appFolder, ask, jobEnd, sessionWithClips } from '../../workbench.ts';
import { numberedClip, numbersAt, numbersIn, type Pace, timesIn } from './numberedClip.ts';

const paces: readonly Pace[] = [
  { name: '29.97.mp4', rate: '30000/1001' },
  { name: 'changing.mp4', rate: '30', pts: '(N*30+mod(N*7,16))/1000/TB' },
  { name: 'from two seconds.mp4', rate: '30', pts: 'PTS+2/TB' },
  { name: 'trimmed.mp4', rate: '30', cutS: 0.5 },
  { name: 'other codec.mov', rate: '25', options: ['-c:v', 'mjpeg', '-q:v', '3'] },
];

const coveredPlace = paces.findIndex(({ name }) => name === '29.97.mp4');

/** On the first frame and one soon after, twice on one, near the end. */
const flagged = [0, 7, 40, 40, 80];

type Options = NonNullable<Params<'handover.start'>['options']>;

const root = mkdtempSync(path.join(tmpdir(), 'rackside-clocks-'));
const newFolder = (name: string): string => mkdtempSync(path.join(root, `${name}-`));

/** What the start page knows and lists of a clip. */
type OnPage = {
  readonly file: string;
  readonly seeksS: readonly number[];
  readonly listed: readonly string[];
};

let backend: Backend;
let sessionId: string;
let covered: string;
/** The number of each frame of the footage, by the clip's name. */
const numbers = new Map<string, readonly number[]>();

beforeAll(async () => {
  const footage = newFolder('footage');
  const files = await Promise.all(paces.map((pace) => numberedClip(footage, pace)));
  for (const file of files) numbers.set(path.basename(file), await numbersIn(file));
  backend = openBackend({ libraryFolder: newFolder('library'), appFolder });
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  const session = await sessionWithClips(backend, files);
  sessionId = session.sessionId;
  covered = session.clipIds[coveredPlace] ?? '';
  for (const clipId of session.clipIds) {
    for (const frame of flagged) {
      const flag = { clipId, criterion: 'depth', severity: 'adjust', reps: 'set', note: `Frame ${frame}` } as const;
      await ask(backend, 'flags.add', { ...flag, frame });
    }
  }
}, 120_000);

afterAll(async () => {
  await backend.close();
  rmSync(root, { recursive: true, force: true });
});

async function handOver(options: Options): Promise<string> {
  const folder = newFolder('out');
  const { jobIds } = await ask(backend, 'handover.start', { sessionIds: [sessionId], folder, options });
  const { id } = await jobEnd(backend, jobIds[0] ?? '');
  const { deliveries } = await ask(backend, 'handover.list', { sessionId });
  const delivery = deliveries.find(({ jobId }) => jobId === id);
  expect(delivery?.failed).toEqual([]);
  return delivery?.path ?? '';
}

/** Reads the start page as a browser would, clip by clip. */
function pageOf(place: string): readonly OnPage[] {
  const html = readFileSync(path.join(place, 'index.html'), 'utf8');
  const data = JSON.parse(/<script type="application\/json" id="data">(.*)<\/script>/.exec(html)?.[1] ?? '');
  const sections = html.split('<section class="clip"').slice(1);
  return sections.map((section, index) => ({
    file: path.join(place, decodeURIComponent(/<video [^>]*?src="([^"]+)"/.exec(section)?.[1] ?? '')),
    seeksS: data.clips[index].notes.map(({ seekS }: { seekS: number }) => seekS),
    listed: [...section.matchAll(/class="note"[^>]*><time>([^<]+)</g)].map(([, time]) => time ?? ''),
  }));
}

type SheetFlag = { readonly clip: string; readonly atS: number; readonly frame: number };

/** The remarks of each clip as the sheet's data tell them, in the order of their times. */
function sheetOf(place: string): readonly (readonly SheetFlag[])[] {
  const { exercises, flags } = JSON.parse(readFileSync(path.join(place, 'sheet.json'), 'utf8'));
  const clips: readonly { readonly id: string }[] = exercises.flatMap((one: { clips: unknown[] }) => one.clips);
  return clips.map(({ id }) =>
    flags.filter(({ clip }: SheetFlag) => clip === id).sort((a: SheetFlag, b: SheetFlag) => a.atS - b.atS),
  );
}

const clockOf = (atS: number): string => {
  const ms = Math.round(atS * 1000);
  return `${Math.floor(ms / 60_000)}:${String(Math.floor(ms / 1000) % 60).padStart(2, '0')}.${String(ms % 1000).padStart(3, '0')}`;
};
const expected = (name: string) => flagged.map((frame) => numbers.get(name)?.[frame]);

describe('a handover as usual', () => {
  let place: string;
  beforeAll(async () => {
    place = await handOver({ loops: false });
  }, 240_000);

  it.each(paces.map(({ name }, index) => [name, index] as const))(
    'has one clock in page, sheet, letter and clip: %s',
    async (name, index) => {
      const page = pageOf(place)[index];
      const sheet = sheetOf(place)[index] ?? [];
      if (page === undefined) throw new Error('The page has too few clips.');
      expect(await numbersAt(page.file, page.seeksS)).toEqual(expected(name));
      // What the sheet says is when the frame appears in the clip that the page plays.
      const times = await timesIn(page.file);
      const halfS = 0.004;
      expect(
        await numbersAt(
          page.file,
          sheet.map(({ atS }) => atS + halfS),
        ),
      ).toEqual(expected(name));
      for (const { atS, frame } of sheet) expect(Math.abs(atS - (times[frame] ?? Number.NaN))).toBeLessThan(0.001);
      expect(page.listed).toEqual(sheet.map(({ atS }) => clockOf(atS)));
      const letter = readFileSync(path.join(place, 'letter.txt'), 'utf8');
      const said = [...letter.matchAll(/\d+:\d\d/g)].map(([time]) => time);
      if (index === 0) expect(clockOf(sheet[0]?.atS ?? 0)).toContain(said[0] ?? 'no time');
    },
  );

  it('plays the clips themselves: originals, and a copy of what not every browser plays', () => {
    const files = pageOf(place).map(({ file }) => path.relative(place, file));
    expect(files).toEqual(
      paces.map(({ name }) =>
        name === 'other codec.mov'
          ? 'clips/other-codec-plain.mp4'
          : `originals/${name.replace(/\.mp4$/, '').replaceAll(/[ .]/g, '-')}.mp4`,
      ),
    );
  });

  it('tells the time of the clips themselves in the annotated ones too, by a clock in their picture', async () => {
    expect(readFileSync(path.join(place, 'index.html'), 'utf8')).toContain('The clock in its corner shows the times');
  });
});

describe.each<[string, Options]>([
  ['pauses at notes', { atNotes: { do: 'freeze', lastsS: 0.3 } }],
  ['slows down around notes', { atNotes: { do: 'slow', speed: 0.5 } }],
  ['plays on', { atNotes: { do: 'playOn' } }],
])('the annotated clip that %s, played alone', (_, options) => {
  it('shows the flagged frame at each note, which is told by the clock of the sheet', async () => {
    const place = await handOver({ ...options, loops: false, originals: false });
    const [pages, sheets] = [pageOf(place), sheetOf(place)];
    for (const [index, { name }] of paces.entries()) {
      const page = pages[index];
      expect(path.relative(place, page?.file ?? '')).toMatch(/^clips\//);
      expect([name, await numbersAt(page?.file ?? '', page?.seeksS ?? [])]).toEqual([name, expected(name)]);
      expect([name, page?.listed]).toEqual([name, sheets[index]?.map(({ atS }) => clockOf(atS))]);
    }
  }, 240_000);
});

describe('a covered clip', () => {
  it('goes as a copy with its covers, on the same clock, and its original stays behind', async () => {
    const box = { leftPx: 100, topPx: 100, widthPx: 80, heightPx: 80 };
    await ask(backend, 'covers.add', { clipId: covered, cover: { kind: 'box', place: { frame: 0, box } } });
    const place = await handOver({ loops: false });
    const page = pageOf(place)[coveredPlace];
    expect(path.relative(place, page?.file ?? '')).toBe('clips/29-97-plain.mp4');
    expect(await numbersAt(page?.file ?? '', page?.seeksS ?? [])).toEqual(expected('29.97.mp4'));
    expect(page?.listed).toEqual(sheetOf(place)[coveredPlace]?.map(({ atS }) => clockOf(atS)));
    expect(JSON.stringify(readFileSync(path.join(place, 'manifest.json'), 'utf8'))).not.toContain('originals/29-97');
  }, 240_000);
});
