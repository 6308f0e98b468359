import { expect, test } from 'vitest';
import { safeFileName } from '../../../../electron/main/bridge/safeFileName.ts';

test.each([
  ['Letter for Trainee One, 2 March', 'Letter for Trainee One, 2 March'],
  ['a/b\\c:d*e?f"g<h>i|j', 'a b c d e f g h i j'],
  ['../../etc/passwd', 'etc passwd'],
  ['.hidden', 'hidden'],
  ['name. . ', 'name'],
  ['line\nbreak\u0000', 'line break'],
  ['brève Überprüfung 💪', 'brève Überprüfung 💪'],
  ['', 'Rackside'],
  ['...', 'Rackside'],
  ['CON', 'CON!'],
  ['lpt1', 'lpt1!'],
  ['reversed\u202Eend', 'reversed end'],
])('%j becomes %j', (suggestion, name) => {
  expect(safeFileName(suggestion)).toBe(name);
});

test('a long name is cut without splitting a character', () => {
  expect(safeFileName('💪'.repeat(300))).toBe('💪'.repeat(50));
});
