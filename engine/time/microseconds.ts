import type { TimeBase } from './frameTable.ts';

/** Division of whole numbers, rounded half up (towards plus infinity); `divisor` is positive. */
export function divideHalfUp(dividend: bigint, divisor: bigint): bigint {
  const doubled = 2n * dividend + divisor;
  const twice = 2n * divisor;
  const quotient = doubled / twice;
  return doubled % twice < 0n ? quotient - 1n : quotient;
}

/** Ticks of a time base as media microseconds, rounded half up; exact for any safe tick value. */
export function ticksToUs(ticks: number, timeBase: TimeBase): number {
  const dividend = BigInt(ticks) * BigInt(timeBase.numerator) * 1_000_000n;
  return Number(divideHalfUp(dividend, BigInt(timeBase.denominator)));
}
