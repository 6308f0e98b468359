import { isDay } from '../time/day.ts';

/** Longest line in octets, without its line end (RFC 5545, section 3.1). */
const mostOctets = 75;

function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

/**
 * A content line with its end, folded after at most 75 octets of UTF-8 (RFC 5545, section 3.1): what follows begins with
 * a space. No character is split.
 */
export function contentLine(line: string): string {
  const lines: string[] = [];
  let [part, octets] = ['', 0];
  for (const character of line) {
    const own = octetsOf(character);
    if (octets + own > mostOctets) {
      lines.push(part);
      [part, octets] = [' ', 1];
    }
    part += character;
    octets += own;
  }
  return [...lines, part].map((each) => `${each}\r\n`).join('');
}

/** Words as a TEXT value (RFC 5545, section 3.3.11): backslash, semicolon, comma and line ends escaped; no controls. */
export const textValue = (words: string): string =>
  words
    .toWellFormed()
    .replace(/\r\n?|[\u0085\u2028\u2029]/g, '\n')
    .replace(/[^\P{Cc}\t\n]/gu, '')
    .replace(/[\\;,]/g, '\\$&')
    .replaceAll('\n', '\\n');

/** An ISO date as a DATE value (section 3.3.4): "20260308". Throws a RangeError for an invalid date. */
export function dateValue(isoDate: string): string {
  if (!isDay(isoDate)) throw new RangeError(`“${isoDate}” is no date; write it as 2026-03-08.`);
  return isoDate.replaceAll('-', '');
}

/** An ISO time as a DATE-TIME value in UTC (section 3.3.5): "20260308T170500Z". Throws a RangeError for an invalid time. */
export function utcValue(isoTime: string): string {
  const time = new Date(isoTime);
  if (Number.isNaN(time.getTime())) throw new RangeError(`“${isoTime}” is no time; write it as 2026-03-08T17:05:00Z.`);
  return `${time.toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;
}
