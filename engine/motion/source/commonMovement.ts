import { median, quantile } from '../signal/quantile.ts';
import { correlationOf, deviationOf, noiseAbout } from './statistics.ts';

/** Values of one thing at rising moments; null = not seen. */
export type Member = {
  readonly values: readonly (number | null)[];
  /** What comes on top of its noise at each moment, as a standard deviation. */
  readonly unsure: readonly number[];
  /** It is what is asked for, and gives the unit; else it only helps. */
  readonly leads: boolean;
};

/** What members have in common: its values in the unit of those that lead, and how far each may be off (one standard deviation). */
export type CommonMovement = {
  readonly values: readonly (number | null)[];
  readonly doubts: readonly (number | null)[];
};

/** A helper moves with what leads: so closely, … */
const leastCorrelation = 0.9;
/** … by at least this share of its way and at most so many times that, … */
const shareOfWay = { least: 0.2, most: 4 } as const;
/** … judged on so many samples that show both. */
const leastShared = 10;
/** How far a helper strays from what leads is told by the distance that nine in ten stay within. */
const mostStrays = 0.9;
const deviationsOfMost = 1.645;
/** A member this many standard deviations off the others at a moment is left out there. */
const strayDeviations = 3.5;
/** A member comes and goes over this long, so that nothing steps when one hides. */
const fadeS = 0.2;
/** A fading member never counts for nothing: it may be the only one. */
const leastFade = 0.02;

type Fitted = {
  readonly values: readonly (number | null)[];
  /** Values = offset + gain × common movement + noise. */
  readonly offset: number;
  readonly gain: number;
  /** Standard deviation at each moment, in the unit of the common movement. */
  readonly deviations: readonly number[];
};

/**
 * The movement that several things share, where each is seen with its own offset, share of the way and noise, and hides now
 * and then. Those that lead are weighed by their noise; a helper that moves with them by how far it strays from them
 * besides, so that it counts where they are hardly seen. Null when nothing that leads is seen.
 */
export function commonMovement(members: readonly Member[], timesS: readonly number[]): CommonMovement | null {
  const leads = alignedLeads(
    members.filter((member) => member.leads && countOf(member.values) >= leastShared),
    timesS,
  );
  if (leads.length === 0) return null;
  const lead = together(leads);
  const helpers = members.flatMap((member) => (member.leads ? [] : (fitHelper(member, lead, timesS) ?? [])));
  return together([...leads, ...helpers]);
}

const countOf = (values: readonly (number | null)[]): number => values.filter((value) => value !== null).length;

/** Those that lead, each with its offset against the one that is seen most. */
function alignedLeads(leads: readonly Member[], timesS: readonly number[]): Fitted[] {
  const [first, ...others] = [...leads].sort((one, other) => countOf(other.values) - countOf(one.values));
  if (first === undefined) return [];
  const reference = fitted(first, timesS, { offset: 0, gain: 1, strays: 0 });
  return [
    reference,
    ...others.flatMap((member) => {
      const shared = surest(sharedOf(member, { values: first.values, doubts: first.unsure }));
      if (shared.length < leastShared) return [];
      const offset = median(shared.map(({ own, common }) => own - common));
      return [fitted(member, timesS, { offset, gain: 1, strays: 0 })];
    }),
  ];
}

type Shared = { readonly own: number; readonly common: number; readonly unsure: number };

/** The moments that show both. */
function sharedOf({ values, unsure }: Member, { values: common, doubts }: CommonMovement): readonly Shared[] {
  return values.flatMap((own, index) => {
    const other = common[index] ?? null;
    if (own === null || other === null) return [];
    return [{ own, common: other, unsure: Math.hypot(unsure[index] ?? 0, doubts[index] ?? 0) }];
  });
}

/** The surer moments, where they differ. */
function surest(shared: readonly Shared[]): readonly Shared[] {
  const middle = median(shared.map(({ unsure }) => unsure));
  return shared.filter(({ unsure }) => unsure <= 1.5 * middle);
}

function fitted(
  { values, unsure }: Member,
  timesS: readonly number[],
  { offset, gain, strays }: { readonly offset: number; readonly gain: number; readonly strays: number },
): Fitted {
  const noise = Math.max(noiseAbout(values, timesS) / gain, 1e-6);
  const fades = fadesOf(values, timesS);
  const spread = smoothed(unsure, timesS);
  return {
    values,
    offset,
    gain,
    deviations: fades.map((fade, index) => Math.hypot(noise, strays, (spread[index] ?? 0) / gain) / Math.sqrt(fade)),
  };
}

/** A helper as a share of the movement that leads; null when it moves otherwise, or too little is seen of both. */
function fitHelper(member: Member, lead: CommonMovement, timesS: readonly number[]): Fitted | null {
  const shared = sharedOf(member, lead);
  if (shared.length < leastShared) return null;
  if (correlationOf(shared.map(({ own, common }) => [own, common])) < leastCorrelation) return null;
  const sure = surest(shared);
  const gain = deviationOf(sure.map(({ own }) => own)) / deviationOf(sure.map(({ common }) => common));
  if (!(gain >= shareOfWay.least && gain <= shareOfWay.most)) return null;
  const offset = median(sure.map(({ own, common }) => own - gain * common));
  const off = shared.map(({ own, common }) => Math.abs((own - offset) / gain - common));
  return fitted(member, timesS, { offset, gain, strays: quantile(off, mostStrays) / deviationsOfMost });
}

/** The weighted mean of what the members say at each moment, without those that stray there. */
function together(fits: readonly Fitted[]): CommonMovement {
  const length = fits[0]?.values.length ?? 0;
  const values: (number | null)[] = [];
  const doubts: (number | null)[] = [];
  for (let index = 0; index < length; index += 1) {
    const said = fits.flatMap(({ values: own, offset, gain, deviations }) => {
      const value = own[index] ?? null;
      const deviation = deviations[index] ?? 1;
      return value === null ? [] : [{ at: (value - offset) / gain, deviation, weight: 1 / deviation ** 2 }];
    });
    const middle = weightedMedian(said);
    const kept =
      said.length < 3 ? said : said.filter(({ at, deviation }) => Math.abs(at - middle) <= strayDeviations * deviation);
    const sum = kept.reduce((all, { weight }) => all + weight, 0);
    values.push(sum === 0 ? null : kept.reduce((all, { at, weight }) => all + at * weight, 0) / sum);
    doubts.push(sum === 0 ? null : 1 / Math.sqrt(sum));
  }
  return { values, doubts };
}

function weightedMedian(said: readonly { readonly at: number; readonly weight: number }[]): number {
  const sorted = [...said].sort((one, other) => one.at - other.at);
  const half = sorted.reduce((all, { weight }) => all + weight, 0) / 2;
  let sum = 0;
  for (const { at, weight } of sorted) {
    sum += weight;
    if (sum >= half) return at;
  }
  return Number.NaN;
}

/** Doubts spread to the moments about them, so that weights change smoothly. */
function smoothed(unsure: readonly number[], timesS: readonly number[]): number[] {
  let from = 0;
  return unsure.map((_, index) => {
    const atS = timesS[index] ?? 0;
    while ((timesS[from] ?? atS) < atS - fadeS) from += 1;
    let [sum, weights] = [0, 0];
    for (let near = from; near < unsure.length && (timesS[near] ?? 0) <= atS + fadeS; near += 1) {
      const weight = 1.01 - Math.abs((timesS[near] ?? 0) - atS) / fadeS;
      sum += weight * (unsure[near] ?? 0);
      weights += weight;
    }
    return sum / weights;
  });
}

/** How far a member counts at each moment: less towards the ends of a stretch in which it is seen. */
function fadesOf(values: readonly (number | null)[], timesS: readonly number[]): number[] {
  const fades = values.map(() => 1);
  const walk = (indices: readonly number[]) => {
    let hiddenAtS: number | null = null;
    for (const index of indices) {
      const atS = timesS[index] ?? 0;
      if (values[index] === null) hiddenAtS = atS;
      else if (hiddenAtS !== null) {
        fades[index] = Math.max(leastFade, Math.min(fades[index] ?? 1, Math.abs(atS - hiddenAtS) / fadeS));
      }
    }
  };
  const indices = values.map((_, index) => index);
  walk(indices);
  walk(indices.toReversed());
  return fades;
}
