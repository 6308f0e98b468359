/** Logarithm of the gamma function for x > 0 (Lanczos 1964, g = 7, nine terms; relative error under 1e-14). */
function logGamma(x: number): number {
  const terms = [
    0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406,
    12.507343278686905, -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
  ];
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const t = x + 6.5;
  const series = terms.reduce((sum, term, i) => sum + (i === 0 ? term : term / (x - 1 + i)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(series);
}

/** Continued fraction of the incomplete beta function, by the modified Lentz method (Abramowitz & Stegun 26.5.8). */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const guard = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / guard(1 - ((a + b) * x) / (a + 1));
  let result = d;
  for (let m = 1; m <= 500; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / guard(1 + even * d);
    c = guard(1 + even / c);
    result *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / guard(1 + odd * d);
    c = guard(1 + odd / c);
    const step = d * c;
    result *= step;
    if (Math.abs(step - 1) < 1e-15) break;
  }
  return result;
}

/** Regularised incomplete beta function I_x(a, b), 0-1. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(x, a, b)) / a : 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** Probability that an F variable with these degrees of freedom is at most `f`. */
function fProbability(f: number, numeratorDf: number, denominatorDf: number): number {
  return f <= 0
    ? 0
    : incompleteBeta((numeratorDf * f) / (numeratorDf * f + denominatorDf), numeratorDf / 2, denominatorDf / 2);
}

/** The value an F variable stays under with this probability (0 < probability < 1), by bisection. */
export function fQuantile(probability: number, numeratorDf: number, denominatorDf: number): number {
  let low = 0;
  let high = 1;
  while (fProbability(high, numeratorDf, denominatorDf) < probability && high < 1e12) high *= 2;
  for (let i = 0; i < 200; i += 1) {
    const middle = (low + high) / 2;
    if (fProbability(middle, numeratorDf, denominatorDf) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
