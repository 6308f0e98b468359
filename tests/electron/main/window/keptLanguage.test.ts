import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { keepLanguage, readLanguage } from '../../../../electron/main/window/keptLanguage.ts';
import { temporaryFolder } from '../../backend/workbench.ts';

test('the first start takes the language of the system where the desk speaks it', () => {
  const none = path.join(temporaryFolder(), 'language.json');
  expect(readLanguage(none, 'de-AT')).toBe('de');
  expect(readLanguage(none, 'de')).toBe('de');
  expect(readLanguage(none, 'en-US')).toBe('en');
  expect(readLanguage(none, 'fr-FR')).toBe('en');
  expect(readLanguage(none, '')).toBe('en');
});

test('what was chosen is there at the next start, whatever the system says', async () => {
  const file = path.join(temporaryFolder(), 'language.json');
  await keepLanguage(file, 'de');
  expect(readLanguage(file, 'en-US')).toBe('de');
  await keepLanguage(file, 'en');
  expect(readLanguage(file, 'de-DE')).toBe('en');
});

test('a file that can’t be read is as if none were there', () => {
  const file = path.join(temporaryFolder(), 'language.json');
  for (const content of ['', '{', 'null', '{"language":"xx"}']) {
    writeFileSync(file, content);
    expect(readLanguage(file, 'de-DE')).toBe('de');
  }
});
