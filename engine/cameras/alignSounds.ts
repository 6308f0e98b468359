/** Mono sound from a clip's first frame on, in real time. */
export type Sound = { readonly samples: Float32Array; readonly rateHz: number };

export type SoundAlignment = {
  /** How much later a moment stands in the other sound than in the lead's, in seconds. */
  readonly offsetS: number;
  /** How alike the two are there, -1 to 1. */
  readonly likeness: number;
};

const coarseHz = 50;
const fineHz = 400;
/** How much of the shorter sound has to lie over the other, and at least how many seconds. */
const leastOverlap = { share: 0.25, seconds: 2 };
/**
 * What two recordings of one room reach, and how far the best place has to stand out from any other. Likeness counts by the square root
 * of the seconds it holds for: two or three sounds in common are easily alike by chance, a whole set of them is not.
 */
const leastWeight = 1.3;
const leastLead = 1.3;
/** Places nearer than this to the best are the same place. */
const samePlaceS = 0.3;

/**
 * Lays two recordings of one room over each other by their onsets (plates, feet, voices): how steeply the loudness rises is
 * compared at every offset, first roughly, then to a few thousandths of a second. Null where no place stands out.
 */
export function alignSounds(lead: Sound, other: Sound): SoundAlignment | null {
  const rough = { lead: onsets(lead, coarseHz), other: onsets(other, coarseHz) };
  const shorter = Math.min(rough.lead.length, rough.other.length);
  const overlap = Math.max(leastOverlap.seconds * coarseHz, Math.round(leastOverlap.share * shorter));
  if (shorter < overlap) return null;
  const lags = Array.from(
    { length: rough.lead.length + rough.other.length - 2 * overlap + 1 },
    (_, place) => place - (rough.lead.length - overlap),
  );
  const scored = lags.map((lag) => {
    const likeness = likenessAt(rough.lead, rough.other, lag);
    const sharedS = (Math.min(rough.lead.length, rough.other.length - lag) - Math.max(0, -lag)) / coarseHz;
    return { lag, likeness, weight: likeness * Math.sqrt(sharedS) };
  });
  const best = scored.reduce((one, next) => (next.weight > one.weight ? next : one));
  const away = scored.filter(({ lag }) => Math.abs(lag - best.lag) > samePlaceS * coarseHz);
  const rival = away.reduce((most, { weight }) => Math.max(most, weight), 0);
  if (best.weight < leastWeight || best.weight < leastLead * rival) return null;

  const fine = { lead: onsets(lead, fineHz), other: onsets(other, fineHz) };
  const around = Math.round((best.lag / coarseHz) * fineHz);
  const reach = Math.ceil((2 * fineHz) / coarseHz);
  const near = Array.from({ length: 2 * reach + 1 }, (_, place) => around - reach + place).map((lag) => ({
    lag,
    likeness: likenessAt(fine.lead, fine.other, lag),
  }));
  const finest = near.reduce((one, next) => (next.likeness > one.likeness ? next : one));
  return { offsetS: finest.lag / fineHz, likeness: best.likeness };
}

/** How much louder each short while is than the one before, in decibels; falling loudness counts as none. */
function onsets({ samples, rateHz }: Sound, everyHz: number): Float64Array {
  const size = rateHz / everyHz;
  const count = Math.floor(samples.length / size);
  const loudness = Float64Array.from({ length: count }, (_, place) => {
    let energy = 0;
    const end = Math.floor((place + 1) * size);
    for (let at = Math.floor(place * size); at < end; at += 1) energy += (samples[at] ?? 0) ** 2;
    return 10 * Math.log10(energy / size + quietest);
  });
  return loudness.map((level, place) => Math.max(0, level - (loudness[place - 1] ?? level)));
}

/** Energy below the noise of any microphone, so that silence has a loudness. */
const quietest = 1e-7;

/** Pearson's correlation of what lies over each other when the other starts `lag` places later. */
function likenessAt(lead: Float64Array, other: Float64Array, lag: number): number {
  const from = Math.max(0, -lag);
  const to = Math.min(lead.length, other.length - lag);
  const count = to - from;
  if (count < 2) return 0;
  let [sumA, sumB, sumAA, sumBB, sumAB] = [0, 0, 0, 0, 0];
  for (let at = from; at < to; at += 1) {
    const a = lead[at] ?? 0;
    const b = other[at + lag] ?? 0;
    sumA += a;
    sumB += b;
    sumAA += a * a;
    sumBB += b * b;
    sumAB += a * b;
  }
  const spread = (sumAA - (sumA * sumA) / count) * (sumBB - (sumB * sumB) / count);
  return spread <= 0 ? 0 : (sumAB - (sumA * sumB) / count) / Math.sqrt(spread);
}
