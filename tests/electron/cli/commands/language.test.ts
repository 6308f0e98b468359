import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { rootFolder, run } from '../runCommand.ts';

const session = 'seeds/demo/session.json';

/** A copy of the session without its pain note, so that nothing is held back. */
function withoutPain(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'rackside-language-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = path.join(folder, 'session.json');
  const words = readFileSync(path.join(rootFolder, session), 'utf8').replace(/"painNote": ".*"/, '"painNote": ""');
  writeFileSync(file, words);
  return file;
}

describe('--language', () => {
  it('writes the letter in German, and says so in its HTML', async () => {
    const { code, stdout } = await run(['letter', session, '--format', 'html', '--language', 'de']);
    expect(code).toBe(0);
    expect(stdout).toContain('<html lang="de">');
    expect(stdout).toContain('Hallo Robin,');
    expect(stdout).toContain('18. Oktober 2026');
  });

  it('writes sheet and timed notes in German, and keeps the headings of the table for machines', async () => {
    const sheet = await run(['sheet', session, '--language', 'de']);
    expect(sheet.stdout).toMatch(/^# Bewertungsbogen: Robin Thale/);
    const notes = await run(['sheet', session, '--format', 'vtt', '--language', 'de']);
    // A note's words are laid on short lines.
    expect(notes.stdout.replaceAll('\n', ' ')).toContain('Gesehen: Die Hüftfalte bleibt über der Oberkante des Knies.');
    const table = await run(['sheet', session, '--format', 'csv', '--language', 'de']);
    expect(table.stdout.replace('\u{FEFF}', '')).toMatch(/^exercise,clip,rep,time,/);
    expect(table.stdout).toContain('Rumänisches Kreuzheben');
  });

  it('gives a cue of the library in its German words, and the notes of the coach as written', async () => {
    const { stdout } = await run(['letter', withoutPain(), '--language', 'de']);
    expect(stdout).toContain('„Hüftfalte unter die Knielinie.“');
    expect(stdout).toContain('Rep 1 turns round about nine centimetres above the knee line.');
  });

  it('changes no grade', async () => {
    const marks = (text: string): string[] => text.match(/[A-F][+-]? \(\d+[.,]?\d*/g) ?? [];
    const english = await run(['letter', session]);
    const german = await run(['letter', session, '--language', 'de']);
    expect(marks(german.stdout).map((mark) => mark.replace(',', '.'))).toEqual(marks(english.stdout));
    expect(marks(english.stdout).length).toBeGreaterThan(3);
  });

  it('refuses a language it does not know', async () => {
    const { code, stderr } = await run(['letter', session, '--language', 'xx']);
    expect(code).toBe(2);
    expect(stderr).toContain('en, de');
  });
});
