import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findMediaTools } from '../../electron/backend/media/tools/mediaTools.ts';
import { sheetSubRip, sheetWebVtt } from '../../engine/notes/noteFiles.ts';
import { catalogue, draft, sessionOf, sessions } from '../engine/letter/sample.ts';
import { core, hostileWords, samples, sessionWithNotes } from '../engine/sheet/hostileWords.ts';
import { type ReadCue, readWebVtt, secondsOf } from './readWebVtt.ts';

/** SubRip has no standard: a count from 1, times with a comma, lines, an empty line (de facto). */
const timing = /^(\d{2}:[0-5]\d:[0-5]\d,\d{3}) --> (\d{2}:[0-5]\d:[0-5]\d,\d{3})$/;

function readSubRip(file: string): ReadCue[] {
  if (file === '') return [];
  expect(file.endsWith('\r\n')).toBe(true);
  expect(file.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  return file
    .trimEnd()
    .split('\r\n\r\n')
    .map((block, index) => {
      const [count, stamps = '', ...lines] = block.split('\r\n');
      expect(count).toBe(String(index + 1));
      const [, start = '', end = ''] = timing.exec(stamps) ?? [];
      expect(stamps).toMatch(timing);
      for (const line of lines) expect(line).not.toMatch(/-->|<[a-z/]|\{\\|^$/i);
      return { id: String(index + 1), startS: secondsOf(start), endS: secondsOf(end), lines };
    });
}

const wordsOf = (cues: readonly ReadCue[]): string => core(cues.flatMap(({ lines }) => lines).join(' '));

describe('the notes as SubRip', () => {
  it('are the cues of the WebVTT file, at the same times with the same words', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const [cues, others] = [readSubRip(sheetSubRip(review, catalogue)), readWebVtt(sheetWebVtt(review, catalogue))];
        expect(cues.map(({ startS, endS }) => [startS, endS])).toEqual(
          others.map(({ startS, endS }) => [startS, endS]),
        );
        expect(wordsOf(cues)).toBe(wordsOf(others));
      }),
      { numRuns: 60 },
    );
  });

  it('give any words back, and none of them as markup', () => {
    fc.assert(
      fc.property(hostileWords, (note) => {
        expect(wordsOf(readSubRip(sheetSubRip(sessionWithNotes([note]), catalogue)))).toContain(core(note));
      }),
      { numRuns: 150 },
    );
  });

  it('of a session without flags are empty', () => {
    expect(sheetSubRip(sessionOf([draft()]), catalogue)).toBe('');
  });
});

const tools = await findMediaTools();

describe('ffmpeg, reading the notes', () => {
  // It takes braces and backslashes of a WebVTT file for commands of another format, which the standard doesn't.
  const plain = samples.filter((sample) => !/[{\\]/.test(sample));
  const read = (format: 'srt' | 'webvtt', file: string): string =>
    execFileSync(tools.ffmpeg.path, ['-v', 'error', '-f', format, '-i', 'pipe:0', '-f', 'srt', 'pipe:1'], {
      input: file,
      encoding: 'utf8',
    });
  const wordsRead = (file: string): string =>
    core(
      file
        .split(/\r?\n\r?\n/)
        .map((block) => block.split(/\r?\n/).slice(2).join(' '))
        .join(' '),
    );

  it.each([
    ['srt', samples, sheetSubRip, readSubRip],
    ['webvtt', plain, sheetWebVtt, readWebVtt],
  ] as const)('finds every cue of the %s file and all of its words', (format, notes, write, readBack) => {
    const file = write(sessionWithNotes(notes), catalogue);
    const cues = readBack(file);
    const output = read(format, file);
    expect(output.match(/^\d{2}:\d{2}:\d{2},\d{3} --> /gm)).toHaveLength(cues.length);
    expect(wordsRead(output)).toBe(wordsOf(cues));
  });
});
