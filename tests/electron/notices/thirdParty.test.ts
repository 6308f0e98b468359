import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { mayBeShipped, productionPackages } from '../../../electron/notices/productionPackages.ts';
import { thirdPartyNotices } from '../../../electron/notices/thirdParty.ts';

const root = path.resolve(import.meta.dirname, '../../..');
const written = readFileSync(path.join(root, 'electron/notices/THIRD-PARTY.md'), 'utf8');

/** Names straight from the lock file: packages that are neither for development nor somebody else's option. */
const lock: {
  readonly packages: Record<string, { readonly version: string; readonly dev?: true; readonly devOptional?: true }>;
} = JSON.parse(readFileSync(path.join(root, 'package-lock.json'), 'utf8'));
const shipped = Object.entries(lock.packages).filter(([at, { dev, devOptional }]) => at !== '' && !dev && !devOptional);

describe('the notices', () => {
  it('name every production package with its version', () => {
    const missing = shipped
      .map(([at, { version }]) => `| ${at.split('node_modules/').at(-1)} | ${version} | `)
      .filter((row) => !written.includes(row));
    expect(missing).toEqual([]);
    expect(shipped.length).toBeGreaterThan(100);
  });

  it('are what npm run notices writes', () => {
    expect(thirdPartyNotices(root) === written ? 'the same' : 'older: npm run notices').toBe('the same');
  });

  it('hold the texts of the licences of programs, fonts, networks and packages', () => {
    for (const words of [
      'GNU GENERAL PUBLIC LICENSE\n                       Version 3, 29 June 2007',
      'GNU LESSER GENERAL PUBLIC LICENSE',
      'SIL OPEN FONT LICENSE Version 1.1',
      'Apache License\n                           Version 2.0, January 2004',
      'Copyright 2022 The Noto Project Authors',
      'for at least three years',
      'complete corresponding source',
      'LICENSES.chromium.html',
    ]) {
      expect(written).toContain(words);
    }
  });
});

describe('what may be shipped', () => {
  it('is every production package', () => {
    expect(productionPackages(root).filter((one) => !mayBeShipped(one))).toEqual([]);
  });

  it.each([
    ['a library', 'GPL-3.0-or-later', false],
    ['@ffmpeg-installer/linux-x64', 'GPL-3.0-or-later', true],
    ['@ffmpeg-installer/linux-x64', 'UNLICENSED', false],
    ['a library', '(MIT AND Zlib)', true],
    ['a library', '(MIT OR GPL-2.0-only)', false],
    ['a library', '', false],
  ])('is not said of everything: %s under %s', (name, licence, expected) => {
    expect(mayBeShipped({ name, licence })).toBe(expected);
  });
});
