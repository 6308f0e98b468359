import { median } from '../joints/points.ts';
import { correlationOf, deviationOf, noiseAbout } from './statistics.ts';

/** Values of one thing at rising moments; null = not seen. `leads`: it is what is asked for, and gives the unit. */
export type Member = { readonly values: readonly (number | null)[]; readonly leads: boolean };

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
/** A member this many standard deviations off the others at a moment is left out there. */
const strayDeviations = 3.5;
/** A member comes and goes over this long, so that nothing steps when one hides. */
const fadeS = 0.2;
/** A fading member never counts for nothing: it may be the only one. */
const leastFade = 0.02;
const rounds = 3;

type Fitted = {
  readonly values: readonly (number | null)[];
  /** Values = offset + gain × common movement + noise. */
  readonly offset: number;
  readonly gain: number;
  /** Standard deviation of the noise, in the unit of the common movement. */
  readonly noise: number;
  readonly fades: readonly number[];
};

/**
 * The movement that several things share, where each is seen with its own offset, share of the way and noise, and hides now
 * and then: they are weighed by their noise, those that do something else are left out, and so is one that strays for a
 * moment. Null when nothing that leads is seen.
 */
export function commonMovement(members: readonly Member[], timesS: readonly number[]): CommonMovement | null {
  const leading = members.filter(({ leads, values }) => leads && countOf(values) >= leastShared);
  const [first, ...others] = [...leading].sort((one, other) => countOf(other.values) - countOf(one.values));
  if (first === undefined) return null;
  const fitLead = (member: Member, to: readonly (number | null)[]): Fitted | null => {
    const shared = sharedOf(member.values, to);
    if (shared.length < leastShared) return null;
    const offset = median(shared.map(([own, common]) => own - common));
    return fitted(member.values, timesS, { offset, gain: 1 });
  };
  let fits: Fitted[] = [fitted(first.values, timesS, { offset: 0, gain: 1 })];
  fits.push(...others.flatMap((member) => fitLead(member, first.values) ?? []));
  fits = weighed(fits, timesS);
  const lead = together(fits).values;
  const helpers = members.filter(({ leads }) => !leads).flatMap(({ values }) => fitHelper(values, lead, timesS) ?? []);
  let all = [...fits, ...helpers];
  for (let round = 0; round < rounds; round += 1) all = weighed(refitted(all, timesS, fits.length), timesS);
  return together(all);
}

const countOf = (values: readonly (number | null)[]): number => values.filter((value) => value !== null).length;

function sharedOf(own: readonly (number | null)[], common: readonly (number | null)[]): (readonly [number, number])[] {
  return own.flatMap((value, index) => {
    const other = common[index] ?? null;
    return value === null || other === null ? [] : [[value, other] as const];
  });
}

function fitted(
  values: readonly (number | null)[],
  timesS: readonly number[],
  { offset, gain }: { readonly offset: number; readonly gain: number },
): Fitted {
  return { values, offset, gain, noise: noiseAbout(values, timesS) / gain, fades: fadesOf(values, timesS) };
}

/** A helper as a share of the movement that leads; null when it moves otherwise, or too little is seen of both. */
function fitHelper(
  values: readonly (number | null)[],
  lead: readonly (number | null)[],
  timesS: readonly number[],
): Fitted | null {
  const shared = sharedOf(values, lead);
  if (shared.length < leastShared) return null;
  if (correlationOf(shared) < leastCorrelation) return null;
  const gain = deviationOf(shared.map(([own]) => own)) / deviationOf(shared.map(([, common]) => common));
  if (!(gain >= shareOfWay.least && gain <= shareOfWay.most)) return null;
  const offset = median(shared.map(([own, common]) => own - gain * common));
  return fitted(values, timesS, { offset, gain });
}

/** Offsets and shares of the way anew, against what all have in common; the first `leads` keep their share. */
function refitted(fits: readonly Fitted[], timesS: readonly number[], leads: number): Fitted[] {
  const common = together(fits).values;
  return fits.flatMap((fit, index) => {
    if (index >= leads) return fitHelper(fit.values, common, timesS) ?? [];
    const offset = median(sharedOf(fit.values, common).map(([own, other]) => own - other));
    return [{ ...fit, offset }];
  });
}

/** Noise of each member anew: how far it strays from the others, and never less than it trembles by itself. */
function weighed(fits: readonly Fitted[], timesS: readonly number[]): Fitted[] {
  if (fits.length < 2) return [...fits];
  return fits.map((fit, index) => {
    const others = together(fits.filter((_, place) => place !== index)).values;
    const strays = sharedOf(fit.values, others).map(([own, common]) => (own - fit.offset) / fit.gain - common);
    const own = noiseAbout(fit.values, timesS) / fit.gain;
    return { ...fit, noise: Math.hypot(own, strays.length < leastShared ? own : spreadOf(strays)) };
  });
}

/** Standard deviation of normal values, by their median size. */
const spreadOf = (strays: readonly number[]): number => 1.4826 * median(strays.map(Math.abs));

/** The weighted mean of what the members say at each moment, without those that stray there. */
function together(fits: readonly Fitted[]): CommonMovement {
  const length = fits[0]?.values.length ?? 0;
  const values: (number | null)[] = [];
  const doubts: (number | null)[] = [];
  for (let index = 0; index < length; index += 1) {
    const said = fits.flatMap(({ values: own, offset, gain, noise, fades }) => {
      const value = own[index] ?? null;
      const deviation = Math.max(noise, 1e-6);
      return value === null
        ? []
        : [{ at: (value - offset) / gain, deviation, weight: (fades[index] ?? 1) / deviation ** 2 }];
    });
    const middle = weightedMedian(said);
    const kept =
      said.length < 3 ? said : said.filter(({ at, deviation }) => Math.abs(at - middle) <= strayDeviations * deviation);
    const sum = kept.reduce((all, { weight }) => all + weight, 0);
    values.push(sum === 0 ? null : kept.reduce((all, { at, weight }) => all + at * weight, 0) / sum);
    doubts.push(sum === 0 ? null : 1 / Math.sqrt(kept.reduce((all, { deviation }) => all + 1 / deviation ** 2, 0)));
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

/** How far a member counts at each moment: less towards the ends of a stretch in which it is seen. */
function fadesOf(values: readonly (number | null)[], timesS: readonly number[]): number[] {
  const at = (index: number) => timesS[index] ?? 0;
  const fades = values.map(() => 1);
  const [first, last] = [values.findIndex((value) => value !== null), values.findLastIndex((value) => value !== null)];
  const walk = (from: number, to: number, step: 1 | -1) => {
    let hiddenAtS: number | null = null;
    for (let index = from; index !== to + step; index += step) {
      if (values[index] === null) hiddenAtS = at(index);
      else if (hiddenAtS !== null) {
        const share = Math.abs(at(index) - hiddenAtS) / fadeS;
        fades[index] = Math.max(leastFade, Math.min(fades[index] ?? 1, share));
      }
    }
  };
  if (first >= 0) {
    walk(0, last, 1);
    walk(values.length - 1, first, -1);
  }
  return fades;
}
