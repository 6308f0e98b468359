import type { RadialProfile } from './radialProfile.ts';
import type { Ring, Rings } from './rings.ts';
import { type DiscShape, spokesOf } from './shape.ts';

/** How far from a circle's radius its edge is looked for along each direction, as a share of the radius. */
const reachShare = 0.06;

/**
 * The ellipse that a disc looks like, from where one of its circles lies along each direction of the profile: the
 * outermost circle on its face if it has one, since the rim's outline also shows the disc's side wall. Gives the shape
 * with its axes; the size stays that of `base`. Null when too few directions show the circle.
 */
export function ellipseOf(
  profile: RadialProfile,
  { rings, base }: { readonly rings: Rings; readonly base: DiscShape },
): DiscShape | null {
  const ring = rings.findLast(({ sign, share }) => sign !== 0 && share > 0.6) ?? { share: 1, sign: 0 as const };
  const edges = edgesOf(profile, ring, base);
  if (edges.length < profile.rays * 0.6) return null;
  const bulge = fitBulge(edges);
  // r = mean + a cos 2θ + b sin 2θ, to first order of an ellipse's flattening.
  const half = Math.hypot(bulge.a, bulge.b);
  return {
    ...base,
    axisRatio: Math.min(1, (bulge.mean - half) / (bulge.mean + half)),
    majorAxisRad: Math.atan2(bulge.b, bulge.a) / 2,
  };
}

type Edge = { readonly directionRad: number; readonly outPx: number };

function edgesOf(profile: RadialProfile, ring: Ring, base: DiscShape): Edge[] {
  const expected = ring.share * profile.radiusPx;
  const edges: Edge[] = [];
  const spokes = spokesOf(base, profile.rays);
  for (let ray = 0; ray < profile.rays; ray += 1) {
    const step = profile.strongestAlong(ray, {
      aboutPx: expected,
      reachPx: expected * reachShare + 1,
      sign: ring.sign,
    });
    if (step === null) continue;
    const across = (spokes.across[ray] ?? 0) * profile.radiusOf(step);
    const down = (spokes.down[ray] ?? 0) * profile.radiusOf(step);
    edges.push({ directionRad: Math.atan2(down, across), outPx: Math.hypot(across, down) });
  }
  return edges;
}

/** Least squares of mean, centre and flattening, in five rounds that leave out what lies far off. */
function fitBulge(edges: readonly Edge[]): { readonly mean: number; readonly a: number; readonly b: number } {
  let kept = edges;
  let found = { mean: 0, a: 0, b: 0 };
  for (let round = 0; round < 5; round += 1) {
    // Directions are even, so the terms of the series are orthogonal but for those left out: iterate on what remains.
    const terms = [0, 0, 0, 0, 0];
    for (let pass = 0; pass < 8; pass += 1) improve(terms, kept);
    found = { mean: terms[0] ?? 0, a: terms[3] ?? 0, b: terms[4] ?? 0 };
    const misses = kept.map((edge) => Math.abs(edge.outPx - seriesAt(terms, edge.directionRad)));
    const limit = Math.max(0.6, 3 * ([...misses].sort((one, other) => one - other)[misses.length >> 1] ?? 0));
    const next = edges.filter((edge) => Math.abs(edge.outPx - seriesAt(terms, edge.directionRad)) <= limit);
    if (next.length < edges.length * 0.5) break;
    kept = next;
  }
  return found;
}

const basis = [
  () => 1,
  (rad: number) => Math.cos(rad),
  (rad: number) => Math.sin(rad),
  (rad: number) => Math.cos(2 * rad),
  (rad: number) => Math.sin(2 * rad),
];

function seriesAt(terms: readonly number[], directionRad: number): number {
  return basis.reduce((sum, term, index) => sum + (terms[index] ?? 0) * term(directionRad), 0);
}

/** One round of coordinate descent on the least squares of the series. */
function improve(terms: number[], edges: readonly Edge[]): void {
  basis.forEach((term, index) => {
    let top = 0;
    let bottom = 0;
    for (const { directionRad, outPx } of edges) {
      const value = term(directionRad);
      top += value * (outPx - seriesAt(terms, directionRad));
      bottom += value * value;
    }
    terms[index] = (terms[index] ?? 0) + (bottom === 0 ? 0 : top / bottom);
  });
}
