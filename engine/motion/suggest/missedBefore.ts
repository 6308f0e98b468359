import type { Measured, RepMeasurement } from '../measurement.ts';
import type { Suggestion } from '../suggestion.ts';

/** What of a rep a person can measure for themselves: by setting an edge, or by clicking hip crease and knee. */
export type Correctable = 'eccentric' | 'pauseStretched' | 'pauseShortened' | 'range' | 'depth';

/**
 * What missed its half-width in a set: of a rep that a person corrected, the measure with the edges and clicks that they set lies
 * further from the measure without them than that one's own ±. A correction within the ± is no miss, whatever it moved.
 */
export function missedIn(
  unaided: readonly RepMeasurement[],
  corrected: readonly RepMeasurement[],
): ReadonlySet<Correctable> {
  const missed = new Set<Correctable>();
  for (const rep of corrected) {
    const before = sharingMost(unaided, rep);
    if (before === undefined) continue;
    if (rep.manualEdges.length > 0) {
      for (const phase of ['eccentric', 'pauseStretched', 'pauseShortened'] as const) {
        if (isOutside(before.durationsS[phase], rep.durationsS[phase])) missed.add(phase);
      }
      const ends = (['stretched', 'shortened'] as const).map((end) => [before.reach?.[end], rep.reach?.[end]] as const);
      if ([[before.romM, rep.romM] as const, ...ends].some(([one, other]) => isOutside(one, other)))
        missed.add('range');
    }
    if (rep.joints?.depthFrom === 'clicks' && isOutside(before.joints?.depthM, rep.joints.depthM)) missed.add('depth');
  }
  return missed;
}

const isOutside = (measured: Measured | null | undefined, said: Measured | null | undefined): boolean =>
  measured !== null &&
  measured !== undefined &&
  said !== null &&
  said !== undefined &&
  Math.abs(said.value - measured.value) > measured.plusMinus + 1e-9;

function sharingMost(reps: readonly RepMeasurement[], { startS, endS }: RepMeasurement): RepMeasurement | undefined {
  const sharedS = (rep: RepMeasurement): number => Math.min(endS, rep.endS) - Math.max(startS, rep.startS);
  const [most] = reps.filter((rep) => sharedS(rep) > 0).sort((one, other) => sharedS(other) - sharedS(one));
  return most;
}

/** Which correctable measure a suggestion speaks of; null for what only its answer can tell to be wrong. */
function spokenOf({ message, measure }: Suggestion): Correctable | null {
  switch (message.id) {
    case 'eccentricTime':
    case 'eccentricQuicker':
    case 'lastThirdDrops':
    case 'everyEccentric':
      return 'eccentric';
    case 'pauseTime':
    case 'pauseShorter':
    case 'everyPause':
    case 'holdTime':
    case 'everyHold':
      return measure.name.includes('shortened') ? 'pauseShortened' : 'pauseStretched';
    case 'rangeShorter':
    case 'turnsEarly':
      return 'range';
    case 'creaseAboveKnee':
    case 'everyDepth':
      return 'depth';
    default:
      return null;
  }
}

/** What is known against the numbers of a set's suggestions. */
export type KnownMisses = {
  readonly missed: ReadonlySet<Correctable>;
  /** Ids of suggestions that were dismissed before, of other sets of the same lift. */
  readonly dismissed: ReadonlySet<string>;
};

/** Suggestions with those said as "about" whose number missed before; their ± is told all the same. */
export const saidAsKnown = (suggestions: readonly Suggestion[], { missed, dismissed }: KnownMisses): Suggestion[] =>
  suggestions.map((suggestion) => {
    const spoken = spokenOf(suggestion);
    if (!dismissed.has(suggestion.id) && (spoken === null || !missed.has(spoken))) return suggestion;
    const { id, values } = suggestion.message;
    return { ...suggestion, message: { id, values: { ...values, about: 'yes' } } };
  });
