import type { RadialProfile } from './radialProfile.ts';

/**
 * A circle of the disc at which brightness changes, about its centre: the edge of a lip, of a raised ring, of the hub.
 * `share`: its radius by that of the rim. `sign`: whether it gets brighter (1) or darker (-1) outward; 0 = either, as at
 * the rim, whose background changes.
 */
export type Ring = { readonly share: number; readonly sign: -1 | 0 | 1 };

/** A disc's circles; the rim is the last. */
export type Rings = readonly Ring[];

/** The rim alone. */
export const rimOnly: Rings = [{ share: 1, sign: 0 }];

const leastChange = 14;
/** A circle of the disc changes the same way all round: its signed mean is nearly its unsigned one … */
const leastAgreement = 0.75;
/** … and it shows along most directions, unlike lettering. */
const leastRays = 0.72;

/**
 * Reads a disc's circles from its profile: the rim is the outermost strong change; within it every change that has the
 * same sign all round. Gives the circles, by the radius of the rim that it found; null when nothing stands out.
 */
export function readRings(profile: RadialProfile): { readonly rings: Rings; readonly radiusPx: number } | null {
  const { signed, unsigned } = profile.means();
  const rimStep = findRim(unsigned, profile);
  if (rimStep === null) return null;
  const radiusPx = profile.radiusOf(rimStep);
  const rings: Ring[] = [];
  for (const step of peaksOf(signed.map(Math.abs))) {
    const whole = Math.round(step);
    const change = signed[whole] ?? 0;
    if (Math.abs(change) < leastChange || Math.abs(change) < leastAgreement * (unsigned[whole] ?? 0)) continue;
    const sign = change > 0 ? 1 : -1;
    if (profile.shareOfRays(step, { sign, least: Math.abs(change) / 2 }) < leastRays) continue;
    // Changes next to the rim are the rim's own.
    if (profile.radiusOf(step) > radiusPx - 1.6) continue;
    rings.push({ share: profile.radiusOf(step) / radiusPx, sign });
  }
  return { rings: [...preferOuter(rings), { share: 1, sign: 0 }], radiusPx };
}

/** The hub stands out of the rim's plane, so its circles move a little against the rim's: they count only without better ones. */
function preferOuter(rings: Rings): Rings {
  const outer = rings.filter(({ share }) => share > 0.6);
  return outer.length > 0 ? outer : rings;
}

/** Seen from more than 14° beside its axis (cosine), what lies deeper than the rim is carried away from its middle … */
const deeperAstray = 0.97;
/** … and a lip alone lies in its plane. */
const lipShare = 0.8;

/** The circles that lie in the plane of the rim, as far as a disc of a shape needs that: all of them seen square on. */
export const ringsOfFace = (rings: Rings, { axisRatio }: { readonly axisRatio: number }): Rings =>
  axisRatio < deeperAstray ? rings.filter(({ share }) => share > lipShare) : rings;

/** The outermost peak that is strong beside the strongest one and stands out of what lies beyond it. */
function findRim(unsigned: Float64Array, profile: RadialProfile): number | null {
  const from = unsigned.findIndex((_, step) => profile.radiusOf(step) > 0.6 * profile.radiusPx);
  const peaks = peaksOf(unsigned).filter((step) => step >= from);
  const strongest = Math.max(...peaks.map((step) => unsigned[Math.round(step)] ?? 0));
  if (strongest < leastChange) return null;
  for (const step of peaks.reverse()) {
    const change = unsigned[Math.round(step)] ?? 0;
    if (change < Math.max(leastChange, 0.34 * strongest)) continue;
    const beyond = unsigned.slice(Math.round(step) + 4, Math.round(step) + 12);
    const level = beyond.length === 0 ? 0 : beyond.reduce((sum, one) => sum + one, 0) / beyond.length;
    if (change > 1.5 * level) return step;
  }
  return null;
}

/** Places of local maxima, between steps by a parabola. */
export function peaksOf(values: Float64Array): number[] {
  const peaks: number[] = [];
  for (let step = 1; step < values.length - 1; step += 1) {
    const before = values[step - 1] ?? 0;
    const here = values[step] ?? 0;
    const after = values[step + 1] ?? 0;
    if (here < before || here <= after) continue;
    const bend = before - 2 * here + after;
    peaks.push(step + (bend < 0 ? (0.5 * (before - after)) / bend : 0));
  }
  return peaks;
}
