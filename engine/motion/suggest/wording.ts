import type { Exercise } from '../../exercises/exercise.ts';
import type { Measured } from '../measurement.ts';

/** An interval is never printed smaller than the step its number is printed in. */
const steps = ({ plusMinus }: Measured, step: number): number => Math.max(1, Math.ceil(plusMinus / step - 1e-9));

const plain = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? (0).toFixed(digits) : text;
};

/** Seconds to a tenth: "1.2 s". */
export const seconds = (value: number): string => `${plain(value, 1)} s`;

/** Metres in whole centimetres: "7 cm". */
export const centimetres = (metres: number): string => `${plain(metres * 100, 0)} cm`;

export const secondsOf = (time: Measured): string => `${seconds(time.value)} ${secondsInterval(time)}`;

export const centimetresOf = (length: Measured): string =>
  `${centimetres(length.value)} ${centimetresInterval(length)}`;

/** How far a change of seconds is sure: "± 0.2 s". */
export const secondsInterval = (time: Measured): string => `± ${plain(steps(time, 0.1) / 10, 1)} s`;

/** How far a change of metres is sure: "± 1 cm". */
export const centimetresInterval = (length: Measured): string => `± ${steps(length, 0.01)} cm`;

/** Degrees in tens: joints are not known any finer. */
export const degreesOf = (angle: Measured): string =>
  `${plain(Math.round(angle.value / 10) * 10, 0)}° ± ${steps(angle, 10) * 10}°`;

export const percentOf = (share: Measured): string => `${plain(share.value, 0)} % ± ${steps(share, 1)} %`;

/** What the eccentric does to the load, as a verb and as a noun. */
export const eccentricWords = ({ lowerEnd }: Exercise): { readonly verb: string; readonly noun: string } =>
  lowerEnd === 'long' ? { verb: 'lowers', noun: 'lowering' } : { verb: 'returns', noun: 'return' };
