import { describe, expect, it } from 'vitest';
import { openPatience } from '../../../../../electron/backend/measure/joints/patience.ts';

const looks = (count: number, look: { readonly tookMs: number; readonly workedMs: number }) => {
  const { isOver } = openPatience();
  return Array.from({ length: count }, () => isOver(look)).includes(true);
};

describe('patience with threads that give way', () => {
  it('lasts while they get half of the time, and in a rush of some seconds', () => {
    expect(looks(1000, { tookMs: 70, workedMs: 35 })).toBe(false);
    expect(looks(5, { tookMs: 1500, workedMs: 35 })).toBe(false);
  });

  it('is over when they get a fiftieth for ten seconds', () => {
    expect(looks(6, { tookMs: 1750, workedMs: 35 })).toBe(true);
  });

  it('counts what was long ago no more', () => {
    const { isOver } = openPatience();
    for (let look = 0; look < 1000; look += 1) isOver({ tookMs: 35, workedMs: 35 });
    const late = Array.from({ length: 7 }, () => isOver({ tookMs: 1750, workedMs: 35 }));
    expect(late.at(-1)).toBe(true);
  });
});
