import { describe, expect, it } from 'vitest';
import { commonMovement, type Member } from '../../../../engine/motion/source/commonMovement.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';

const timesS = Array.from({ length: 180 }, (_, frame) => frame / 30);
const way = (timeS: number): number => 40 * Math.sin(2 * timeS);

/** Something that goes a share of the way, with an offset and noise; hidden where `hides` says so. */
function member(
  {
    offset = 0,
    share = 1,
    noise = 0,
    seed = 1,
  }: Readonly<Record<'offset' | 'share' | 'noise' | 'seed', number>> | Record<string, number>,
  {
    leads = false,
    hides = () => false,
  }: { readonly leads?: boolean; readonly hides?: (timeS: number) => boolean } = {},
): Member {
  const off = whiteNoise(timesS.length, seed);
  return {
    leads,
    unsure: timesS.map(() => 0),
    values: timesS.map((timeS, frame) =>
      hides(timeS) ? null : offset + share * way(timeS) + noise * (off[frame] ?? 0),
    ),
  };
}

/** How far the common movement is from the way at most, beside its mean offset. */
function worst(members: readonly Member[]): number {
  const values = commonMovement(members, timesS)?.values ?? [];
  const off = values.flatMap((value, frame) => (value === null ? [] : [value - way(timesS[frame] ?? 0)]));
  const mean = off.reduce((sum, one) => sum + one, 0) / off.length;
  return Math.max(...off.map((one) => Math.abs(one - mean)));
}

describe('what joints have in common', () => {
  it('does not step where one hides and comes back, whatever their offsets and shares of the way', () => {
    const lead = member(
      { offset: 300, noise: 0.2, seed: 1 },
      { leads: true, hides: (timeS) => timeS > 2 && timeS < 3.5 },
    );
    const helper = member({ offset: -80, share: 0.6, noise: 0.2, seed: 2 });
    expect(worst([lead, helper])).toBeLessThan(2.5);
  });

  it('is told by two that lead better than by one', () => {
    const one = member({ noise: 3, seed: 3 }, { leads: true });
    const other = member({ offset: 25, noise: 3, seed: 4 }, { leads: true });
    const rms = (members: readonly Member[]) => {
      const off = (commonMovement(members, timesS)?.values ?? []).map(
        (value, frame) => (value ?? 0) - way(timesS[frame] ?? 0),
      );
      const mean = off.reduce((sum, each) => sum + each, 0) / off.length;
      return Math.sqrt(off.reduce((sum, each) => sum + (each - mean) ** 2, 0) / off.length);
    };
    // Two of equal noise have a mean of 1/√2 of it: 2.12 of 3.
    expect(rms([one, other])).toBeGreaterThan(1.7);
    expect(rms([one, other])).toBeLessThan(2.5);
  });

  it('leaves out what moves otherwise', () => {
    const lead = member({ noise: 0.5, seed: 5 }, { leads: true });
    const still = member({ share: 0, noise: 0.5, seed: 6 });
    const against = member({ share: -1, noise: 0.5, seed: 7 });
    expect(worst([lead, still, against])).toBeLessThan(2.5);
  });

  it('goes by the one that the network is sure of', () => {
    const sure = member({ noise: 0.3, seed: 8 }, { leads: true });
    const guess = member({ noise: 0.3, seed: 9 }, { leads: true });
    const stuck = {
      ...guess,
      values: guess.values.map((value, frame) => ((timesS[frame] ?? 0) > 2 && (timesS[frame] ?? 0) < 2.6 ? 0 : value)),
      unsure: timesS.map((timeS) => (timeS > 2 && timeS < 2.6 ? 30 : 0)),
    };
    expect(worst([sure, stuck])).toBeLessThan(3);
  });

  it('is nothing where nothing that leads is seen', () => {
    expect(commonMovement([member({ noise: 1, seed: 1 })], timesS)).toBeNull();
  });
});
