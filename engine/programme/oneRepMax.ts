/** Estimates the load for one repetition from a load and the repetitions done with it. */
type Formula = { readonly name: string; readonly kilograms: (loadKg: number, reps: number) => number };

/**
 * Published formulas (coefficients from memory, cross-checked against each other: Epley 1985, Brzycki 1993, Lombardi 1989,
 * Lander 1985, O'Conner 1989, Mayhew 1992, Wathan 1994).
 */
const formulas: readonly Formula[] = [
  { name: 'Epley', kilograms: (load, reps) => load * (1 + reps / 30) },
  { name: 'Brzycki', kilograms: (load, reps) => (36 * load) / (37 - reps) },
  { name: 'Lombardi', kilograms: (load, reps) => load * reps ** 0.1 },
  { name: 'Lander', kilograms: (load, reps) => (100 * load) / (101.3 - 2.67123 * reps) },
  { name: "O'Conner", kilograms: (load, reps) => load * (1 + 0.025 * reps) },
  { name: 'Mayhew', kilograms: (load, reps) => (100 * load) / (52.2 + 41.9 * Math.exp(-0.055 * reps)) },
  { name: 'Wathan', kilograms: (load, reps) => (100 * load) / (48.8 + 53.8 * Math.exp(-0.075 * reps)) },
];

/** Most repetitions for an estimate: beyond, the formulas disagree (Ruf et al. 2018 put the limit near ten). */
export const mostRepsForEstimate = 12;

export type OneRepMax = {
  readonly lowKg: number;
  readonly highKg: number;
  readonly byFormula: readonly { readonly name: string; readonly kilograms: number }[];
};

/**
 * The load for one repetition as a range over formulas, from a set taken to its last possible repetition; one repetition is
 * its own answer. Null above twelve repetitions, and for loads or repetitions that are none.
 */
export function estimateOneRepMax(loadKg: number, reps: number): OneRepMax | null {
  if (!(loadKg > 0) || !Number.isInteger(reps) || reps < 1 || reps > mostRepsForEstimate) return null;
  const byFormula = formulas.map(({ name, kilograms }) => ({
    name,
    kilograms: reps === 1 ? loadKg : kilograms(loadKg, reps),
  }));
  const all = byFormula.map(({ kilograms }) => kilograms);
  return { lowKg: Math.min(...all), highKg: Math.max(...all), byFormula };
}
