import { hash } from 'node:crypto';

/** Sums of digests are kept modulo this plus one: those of millions of rows still fit into SQLite's 64 bits. */
export const digestMask = 2 ** 40 - 1;

const digits = 10;

/** A number of 40 bits made of a row's values in order: the start of their SHA-256. Rows that differ in anything differ in it. */
export function digestOfRow(...values: readonly unknown[]): number {
  const plain = values.map((value) => (value instanceof Uint8Array ? [hash('sha256', value)] : spelled(value)));
  return Number.parseInt(hash('sha256', JSON.stringify(plain)).slice(0, digits), 16);
}

/** JSON would write numbers without end, and minus zero, as other values. */
const spelled = (value: unknown): unknown =>
  typeof value === 'number' && (!Number.isFinite(value) || Object.is(value, -0))
    ? [String(1 / value), value > 0]
    : value;
