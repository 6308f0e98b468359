/** Two turns of one rep that two cameras saw lie no further apart than this. */
const apartS = 0.2;
/** A turn that one camera sees and the other misses must stay the exception. */
const leastShare = 0.6;

type Fit = { readonly offsetS: number; readonly matches: number; readonly meanApartS: number };

/**
 * How much later the turning points of a set stand on one camera's clock than on the lead's, in seconds of real time: the offset that
 * brings most of them together. Null where fewer than two come together, fewer than six in ten of the camera that saw fewer, or as many
 * at another offset, as in a set cut at both ends whose reps are all alike.
 */
export function alignReps(leadS: readonly number[], otherS: readonly number[]): number | null {
  const offsets = leadS.flatMap((lead) => otherS.map((other) => other - lead));
  const fits = offsets.map((offsetS) => fitAt(leadS, otherS, offsetS)).sort(better);
  const [best] = fits;
  if (best === undefined) return null;
  if (best.matches < 2 || best.matches < leastShare * Math.min(leadS.length, otherS.length)) return null;
  const rival = fits.find(({ offsetS }) => Math.abs(offsetS - best.offsetS) > 2 * apartS);
  return rival?.matches === best.matches ? null : best.offsetS;
}

const better = (one: Fit, other: Fit): number => other.matches - one.matches || one.meanApartS - other.meanApartS;

/** The turns that meet at an offset, and the offset that suits those best. */
function fitAt(leadS: readonly number[], otherS: readonly number[], offsetS: number): Fit {
  const free = new Set(otherS);
  const offsets: number[] = [];
  for (const lead of leadS) {
    const nearest = [...free].sort((a, b) => Math.abs(a - lead - offsetS) - Math.abs(b - lead - offsetS))[0];
    if (nearest === undefined || Math.abs(nearest - lead - offsetS) > apartS) continue;
    free.delete(nearest);
    offsets.push(nearest - lead);
  }
  const middleS = median(offsets) ?? offsetS;
  const apart = offsets.reduce((sum, each) => sum + Math.abs(each - middleS), 0);
  return { offsetS: middleS, matches: offsets.length, meanApartS: apart / Math.max(1, offsets.length) };
}

function median(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  const low = sorted[Math.floor((sorted.length - 1) / 2)];
  const high = sorted[Math.floor(sorted.length / 2)];
  return low === undefined || high === undefined ? null : (low + high) / 2;
}
