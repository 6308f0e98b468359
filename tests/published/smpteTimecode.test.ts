import { describe, expect, it } from 'vitest';
import { formatTimecode, framesPerDay, parseTimecode, type TimecodeRate } from '../../engine/time/writtenTime.ts';

// SMPTE ST 12-1: at 30000/1001 frames per second, frame numbers 00 and 01 are left out at the start of every minute
// except minutes 00, 10, 20, 30, 40 and 50; at 60000/1001, numbers 00 to 03.
const drop30: TimecodeRate = { counted: 30, numbers: 'drop' };
const drop60: TimecodeRate = { counted: 60, numbers: 'drop' };

const table = [
  [0, '00:00:00;00'],
  [1_799, '00:00:59;29'],
  [1_800, '00:01:00;02'],
  [3_597, '00:01:59;29'],
  [3_598, '00:02:00;02'],
  [17_981, '00:09:59;29'],
  [17_982, '00:10:00;00'],
  [17_983, '00:10:00;01'],
  [107_891, '00:59:59;29'],
  [107_892, '01:00:00;00'],
  [2_589_407, '23:59:59;29'],
] as const;

describe('29.97 drop-frame', () => {
  it.each(table)('frame %d is %s', (frame, label) => {
    expect(formatTimecode(frame, drop30)).toBe(label);
    expect(parseTimecode(label, drop30)).toBe(frame);
  });

  it('labels every frame of a day in rising order, reads each back, and uses only allowed numbers', () => {
    expect(framesPerDay(drop30)).toBe(2_589_408);
    let wrong = 0;
    let before = '';
    for (let frame = 0; frame < 2_589_408; frame++) {
      const label = formatTimecode(frame, drop30);
      const dropped = /^\d\d:\d[1-9]:00;0[01]$/.test(label);
      if (dropped || label <= before || parseTimecode(label, drop30) !== frame) wrong += 1;
      before = label;
    }
    expect(wrong).toBe(0);
  });

  it('begins again after a day', () => {
    expect(formatTimecode(2_589_408, drop30)).toBe('00:00:00;00');
  });

  it.each(['00:01:00;00', '00:01:00;01', '00:59:00;00', '23:59:00;01'])('has no frame called %s', (label) => {
    expect(parseTimecode(label, drop30)).toBeNull();
  });

  it.each(['00:10:00;00', '00:10:00;01', '00:01:01;00', '00:01:00.02'])('has a frame called %s', (label) => {
    expect(parseTimecode(label, drop30)).not.toBeNull();
  });
});

describe('59.94 drop-frame', () => {
  it.each([
    [3_600, '00:01:00;04'],
    [35_964, '00:10:00;00'],
    [215_784, '01:00:00;00'],
  ] as const)('frame %d is %s', (frame, label) => {
    expect(formatTimecode(frame, drop60)).toBe(label);
    expect(parseTimecode(label, drop60)).toBe(frame);
  });
});

describe('counting every number', () => {
  it.each([
    [25, 90_000, '01:00:00:00'],
    [24, 86_399, '00:59:59:23'],
    [30, 108_000, '01:00:00:00'],
    [60, 3_661, '00:01:01:01'],
  ] as const)('at %d, frame %d is %s', (counted, frame, label) => {
    const rate: TimecodeRate = { counted, numbers: 'all' };
    expect(formatTimecode(frame, rate)).toBe(label);
    expect(parseTimecode(label, rate)).toBe(frame);
  });
});

it.each([
  ['00:00:00:30', { counted: 30, numbers: 'all' }],
  ['00:00:60:00', { counted: 30, numbers: 'all' }],
  ['24:00:00:00', { counted: 30, numbers: 'all' }],
  ['0:00:00:00', { counted: 30, numbers: 'all' }],
  ['00:00:00;00', { counted: 30, numbers: 'all' }],
  ['00:00:00:00', { counted: 30, numbers: 'drop' }],
  ['', { counted: 30, numbers: 'drop' }],
] as const)('refuses the label "%s"', (label, rate) => {
  expect(parseTimecode(label, rate)).toBeNull();
});
