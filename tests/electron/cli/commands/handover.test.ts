import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shortClip } from '../../backend/handover/shortClip.ts';
import { linesOf, rootFolder, run, runProgram } from '../runCommand.ts';

let folder = '';
let review = '';

const reviewOf = (name: string, clips: readonly { readonly id: string; readonly path?: string }[]) => ({
  format: 'rackside-review',
  version: 4,
  coach: 'Ada Quill',
  trainee: { name },
  session: { date: '2026-03-01' },
  entries: [
    {
      id: 'squat',
      exercise: 'back-squat',
      clips: clips.map((clip) => ({
        ...clip,
        name: `Set ${clip.id}`,
        view: 'side',
        reps: [{ index: 1, start: { seconds: 0.2 }, end: { seconds: 1.2 } }],
      })),
      flags: clips.map(({ id: clip }) => ({
        ...{ clip, criterion: 'depth', severity: 'adjust', reps: [1], at: { seconds: 0.6 }, note: 'Lower.' },
      })),
      ticks: ['depth', 'eccentricTempo', 'pauses', 'barPath', 'headPosition', 'spinePosition'].flatMap((criterion) =>
        clips.map(({ id: clip }) => ({ clip, criterion, reps: 'set' })),
      ),
    },
  ],
});

function write(name: string, content: unknown): string {
  const file = path.join(folder, name);
  writeFileSync(file, JSON.stringify(content));
  return file;
}

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(path.join(tmpdir(), 'rackside-handover-')));
  await shortClip(folder, 'a.mp4');
  review = write('review.json', reviewOf('Alva Brook', [{ id: 'a', path: 'a.mp4' }]));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a review file', () => {
  it('is handed over as a folder with its clips', async () => {
    const out = path.join(folder, 'out');
    const { code, stdout, stderr } = await run(['handover', review, '--out', out, '--json', '--next', '2026-03-08']);
    expect([code, stderr]).toEqual([0, '']);
    const place = path.join(out, '2026-03-01-alva-brook');
    expect(JSON.parse(stdout)).toEqual([{ sessionId: null, path: place, version: 1, failed: [], problem: '' }]);
    expect(readdirSync(path.join(place, 'clips')).sort()).toEqual(['set-a-rep-1.mp4', 'set-a.mp4'].sort());
    expect(readdirSync(path.join(place, 'originals')).sort()).toEqual(
      ['set-a-reps.vtt', 'set-a.mp4', 'set-a.srt', 'set-a.vtt'].sort(),
    );
    expect(readFileSync(path.join(place, 'next-filming.ics'), 'utf8')).toContain('DTSTART;VALUE=DATE:20260308');
    expect(readFileSync(path.join(place, 'index.html'), 'utf8')).toContain('src="originals/set-a.mp4"');
  });

  // The days of these two places always differ: one clock is 25 hours ahead of the other (IANA time zone database).
  it.each(['Pacific/Pago_Pago', 'Pacific/Kiritimati'])(
    'asks for film a week from the day it is in %s',
    async (zone) => {
      const out = path.join(folder, path.basename(zone));
      const aWeekOn = () =>
        new Intl.DateTimeFormat('en-CA', { timeZone: zone, dateStyle: 'short' })
          .format(Date.now() + 7 * 86_400_000)
          .replaceAll('-', '');
      const before = aWeekOn();
      const { code } = await runProgram(['handover', review, '--out', out, '--no-clips', '--no-originals'], folder, {
        TZ: zone,
      });
      expect(code).toBe(0);
      const calendar = readFileSync(path.join(out, '2026-03-01-alva-brook', 'next-filming.ics'), 'utf8');
      expect([before, aWeekOn()]).toContain(/DTSTART;VALUE=DATE:(\d{8})/.exec(calendar)?.[1]);
    },
  );

  it('of several files are handed over one after the other, and a bad one keeps none of the others back', async () => {
    const bad = path.join(folder, 'no-review.json');
    writeFileSync(bad, '[]');
    const out = path.join(folder, 'several');
    const { code, stdout, stderr } = await run(['handover', review, bad, review, '--out', out, '--no-clips', '--json']);
    expect(code).toBe(1);
    expect(linesOf(stderr).at(-1)).toMatch(/1 of 3 sessions could not be handed over: .*no-review\.json/);
    expect(readdirSync(out)).toHaveLength(2);
    expect(JSON.parse(stdout)).toMatchObject([{ problem: '' }, { path: null }, { problem: '' }]);
  });

  it('give the clips of several sessions a folder each', async () => {
    const out = path.join(folder, 'clips-of-several');
    const { code, stdout } = await run(['clip', review, review, '--out', out, '--no-sound', '--json']);
    expect(code).toBe(0);
    const folders = readdirSync(out).sort();
    expect(folders).toHaveLength(2);
    expect(JSON.parse(stdout)).toEqual(
      folders.map((one) => ({ folder: path.join(out, one), files: ['clips/set-a.mp4'], failed: [] })),
    );
    for (const one of folders) expect(readdirSync(path.join(out, one, 'clips'))).toEqual(['set-a.mp4']);
  });

  it('names what is missing in one line, and delivers the rest', async () => {
    const clips = [{ id: 'a', path: 'a.mp4' }, { id: 'b', path: 'gone.mp4' }, { id: 'c' }];
    const file = write('missing.json', reviewOf('Bo Finch', clips));
    const out = path.join(folder, 'missing');
    const { code, stdout, stderr } = await run([
      'handover',
      file,
      '--out',
      out,
      '--names',
      'initials',
      '--zip',
      '--json',
    ]);
    expect(code).toBe(1);
    expect(linesOf(stderr)).toHaveLength(3);
    expect(linesOf(stderr).at(-1)).toMatch(/"Set b", "Set c"/);
    expect(readdirSync(out)).toEqual(['2026-03-01-b-f.zip']);
    expect(JSON.parse(stdout)).toMatchObject([{ failed: [{ clip: 'Set b' }, { clip: 'Set c' }] }]);
  });

  it('gives its clips alone, slow at remarks and with a place covered', async () => {
    const out = path.join(folder, 'clips-alone');
    const how = ['--slow', '0.5', '--loops', '--no-sound', '--cover', '10,10,40,40', '--stills'];
    const { code, stdout, stderr } = await run(['clip', review, '--out', out, ...how, '--json']);
    expect([code, stderr]).toEqual([0, '']);
    expect(JSON.parse(stdout).files.sort()).toEqual([
      'clips/set-a-rep-1.mp4',
      'clips/set-a.mp4',
      'stills/set-a-01.jpg',
    ]);
    expect(readdirSync(out).sort()).toEqual(['clips', 'stills']);
  });

  it.each([
    [['handover'], /Wrong use/],
    [['handover', '--out', 'x'], /review file, or --library/],
    [['handover', '--out', 'x', '--library', 'y'], /--session ID/],
    [['handover', 'r.json', '--out', 'x', '--library', 'y', '--all-due'], /not both/],
    [['clip', 'r.json', '--out', 'x', '--slow', '0.5', '--freeze', '2'], /give one/],
    [['clip', 'r.json', '--out', 'x', '--slow', '9'], /Wrong use/],
    [['clip', 'r.json', '--out', 'x', '--cover', 'face'], /Wrong use/],
  ])('is refused with one line and a 2: %s', async (args, why) => {
    const { code, stdout, stderr } = await run(args, folder);
    expect([code, stdout]).toEqual([2, '']);
    expect(linesOf(stderr)).toHaveLength(1);
    expect(stderr).toMatch(why);
    expect(readdirSync(folder)).not.toContain('x');
  });

  const readingClips: readonly [string, readonly string[]][] = [
    ['handover', ['--out', 'outside']],
    ['clip', ['--out', 'outside']],
    ['sheet', ['--stills', '--out', 'outside.html']],
    ['letter', ['--stills', '--out', 'outside.html']],
  ];

  it.each(readingClips)('of footage outside its folder is asked about first: %s', async (command, how) => {
    const room = mkdtempSync(path.join(folder, 'room-'));
    const file = path.join(room, 'r.json');
    writeFileSync(file, JSON.stringify(reviewOf('Eve Finn', [{ id: 'a', path: '../a.mp4' }])));
    const { code, stdout, stderr } = await run([command, file, ...how], room);
    expect([code, stdout]).toEqual([1, '']);
    expect(linesOf(stderr)).toHaveLength(1);
    expect(stderr).toContain(`"${path.join(folder, 'a.mp4')}"`);
    expect(stderr).toMatch(/nothing was written.*--footage-outside/);
    expect(readdirSync(room)).toEqual(['r.json']);
  });

  it('of footage outside its folder is read once that is allowed', async () => {
    const room = mkdtempSync(path.join(folder, 'room-'));
    const file = path.join(room, 'r.json');
    writeFileSync(file, JSON.stringify(reviewOf('Eve Finn', [{ id: 'a', path: '../a.mp4' }])));
    const { code } = await run(['sheet', file, '--stills', '--footage-outside', '--out', 'sheet.html'], room);
    expect(code).toBe(0);
    expect(readFileSync(path.join(room, 'sheet.html'), 'utf8')).toContain('src="data:image/jpeg;base64,');
  });

  it('leaves nothing behind after Ctrl-C', async () => {
    const out = path.join(folder, 'cancelled');
    const guard = path.join(rootFolder, 'electron', 'launch', 'guard.mjs');
    const clip = path.join(rootFolder, 'seeds', 'footage', 'squat-side.mp4');
    const file = write('long.json', reviewOf('Cy Dunn', [{ id: 'a', path: clip }]));
    const child = execFile(process.execPath, [
      guard,
      '../cli/main.ts',
      'handover',
      file,
      '--footage-outside',
      '--out',
      out,
    ]);
    const ended = new Promise((resolve) => child.on('exit', (code) => resolve(code)));
    await expect.poll(() => readdirSync(folder), { timeout: 20_000, interval: 20 }).toContain('cancelled');
    child.kill('SIGINT');
    expect(await ended).toBe(130);
    expect(readdirSync(folder)).not.toContain('cancelled');
  });
});

describe('a library', () => {
  it('hands over all that is due in one command, once, and another takes it in to be read', async () => {
    const library = path.join(folder, 'library');
    await run(['library', 'init', '--library', library, '--coach', 'Ada Quill']);
    const missing = write('two.json', reviewOf('Dee Egan', [{ id: 'c' }]));
    for (const file of [review, missing]) await run(['library', 'import', '--library', library, file]);
    const out = path.join(folder, 'due');
    const due = ['handover', '--library', library, '--all-due', '--out', out, '--no-loops', '--originals'];
    const first = await run([...due, '--json']);
    expect(first.code).toBe(1);
    expect(linesOf(first.stderr).at(-1)).toMatch(/"Set c"/);
    const lines: { path: string; version: number }[] = JSON.parse(first.stdout);
    expect(lines.map(({ path: place, version }) => [path.basename(place), version]).sort()).toEqual([
      ['2026-03-01-alva-brook', 1],
      ['2026-03-01-dee-egan', 1],
    ]);
    const again = await run(due);
    expect([again.code, again.stdout, linesOf(again.stderr)]).toEqual([0, '', ['No session is due.']]);
    const other = path.join(folder, 'other');
    await run(['library', 'init', '--library', other]);
    const taken = await run(['library', 'import', '--library', other, path.join(out, '2026-03-01-alva-brook')]);
    expect([taken.code, taken.stderr]).toEqual([0, expect.stringMatching(/Imported 1 clip/)]);
    const listed = await run(['library', 'list', '--library', other]);
    expect(listed.stdout).toMatch(/Alva Brook.*read-only/);
    expect((await run(['handover', '--library', other, '--all-due', '--out', out])).stderr).toMatch(
      /No session is due/,
    );
  });
});

describe('letter and sheet', () => {
  it('name the trainee as asked, on the paper asked for', async () => {
    const letter = await run(['letter', review, '--names', 'initials']);
    expect(letter.stdout).toContain('A.B.');
    expect(letter.stdout).not.toMatch(/Alva|Brook/);
    const pdf = path.join(folder, 'sheet.pdf');
    await run(['sheet', review, '--names', 'first', '--paper', 'letter', '--out', pdf]);
    expect(readFileSync(pdf, 'latin1')).toMatch(/MediaBox \[0 0 612 792\]/);
  });
});
