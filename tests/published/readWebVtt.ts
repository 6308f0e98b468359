import { expect } from 'vitest';

/** W3C WebVTT, section "WebVTT timestamp". */
export const webVttTimestamp = /^(?:\d{2,}:)?[0-5]\d:[0-5]\d\.\d{3}$/;

export const secondsOf = (stamp: string): number =>
  stamp
    .replace(',', '.')
    .split(':')
    .map(Number)
    .reduce((sum, part) => sum * 60 + part, 0);

export type ReadCue = {
  readonly id: string;
  readonly startS: number;
  readonly endS: number;
  readonly lines: readonly string[];
};

const unescaped = (line: string): string =>
  line.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');

/** Reads a file by the standard's grammar; fails where it is broken. */
export function readWebVtt(file: string): ReadCue[] {
  expect(file).not.toContain('\0');
  const [header = '', ...blocks] = file.split(/(?:\r\n|\r|\n){2,}/);
  expect(header).toMatch(/^WEBVTT(?:[ \t].*)?$/);
  return blocks.flatMap((block) => {
    const lines = block.split(/\r\n|\r|\n/).filter((line, index, all) => line !== '' || index < all.length - 1);
    if (lines[0]?.startsWith('NOTE')) {
      expect(block).not.toContain('-->');
      return [];
    }
    const [id = '', timing = '', ...payload] = lines;
    const [start = '', arrow, end = '', ...more] = timing.split(/[ \t]+/);
    expect(id).not.toContain('-->');
    expect([arrow, more]).toEqual(['-->', []]);
    expect(start).toMatch(webVttTimestamp);
    expect(end).toMatch(webVttTimestamp);
    for (const line of payload) expect(line.replace(/&(?:amp|lt|gt);/g, '')).not.toMatch(/[&<>]|-->/);
    return [{ id, startS: secondsOf(start), endS: secondsOf(end), lines: payload.map(unescaped) }];
  });
}
