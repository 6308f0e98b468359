import { plain } from './figures.ts';

/** Kilograms in a pound: exact by definition (1959). */
const kgPerLb = 0.45359237;

/** A load in the trainee's units: "80 kg", "176.4 lb". */
export const load = (loadKg: number, units: 'kg' | 'lb'): string =>
  units === 'kg' ? `${plain(loadKg)} kg` : `${plain(Math.round((loadKg / kgPerLb) * 10) / 10)} lb`;
