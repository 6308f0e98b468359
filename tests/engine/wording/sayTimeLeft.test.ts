import { expect, it } from 'vitest';
import { sayTimeLeft } from '../../../engine/wording/sayTimeLeft.ts';

it.each([
  [0, 'a few seconds left', 'noch ein paar Sekunden'],
  [12, 'about 20 s left', 'noch etwa 20 s'],
  [50, 'about 50 s left', 'noch etwa 50 s'],
  [58, 'about 1 min left', 'noch etwa 1 min'],
  [200, 'about 3 min left', 'noch etwa 3 min'],
  [3600, 'about 1 h left', 'noch etwa 1 h'],
  [5400, 'about 1 h 30 min left', 'noch etwa 1 h 30 min'],
])('%d seconds are said as “%s”, in German “%s”', (seconds, english, german) => {
  expect(sayTimeLeft(seconds, 'en')).toBe(english);
  expect(sayTimeLeft(seconds, 'de')).toBe(german);
});
