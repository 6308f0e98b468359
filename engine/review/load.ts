/** The units a trainee knows their loads in. */
export type LoadUnits = 'kg' | 'lb';

/** Kilograms in a pound: exact, by the agreement on the international pound of 1959. */
export const kgPerLb = 0.45359237;

/** Kilograms of a load that was typed in some units. */
export const kgOfLoad = (load: number, units: LoadUnits): number => (units === 'kg' ? load : load * kgPerLb);

/** A difference below which two loads in pounds are the same number, put into kilograms and back. */
const sameLb = 1e-6;

/**
 * A load as a number of some units. Pounds that were typed come back as they were; kilograms become the nearest half
 * pound, as discs are loaded: 61.2 kg is 135 lb, not 134.9.
 */
export function loadIn(units: LoadUnits, kilograms: number): number {
  if (units === 'kg') return kilograms;
  const pounds = kilograms / kgPerLb;
  const typed = Math.round(pounds * 100) / 100;
  return Math.abs(pounds - typed) < sameLb ? typed : Math.round(pounds * 2) / 2;
}
