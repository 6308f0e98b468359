/** First and last byte, both included. */
export type ByteRange = { readonly first: number; readonly last: number };

/**
 * Reads a `Range` header (RFC 9110, section 14): one range of bytes, closed, open-ended or counted from the end.
 *
 * @param header the header's value, or null when there is none
 * @param size length of the whole in bytes
 * @returns the range cut to the size; `whole` without a header; `unsatisfiable` for a range outside, a list of
 *   ranges, another unit, or anything else that is not one range
 */
export function parseByteRange(header: string | null, size: number): ByteRange | 'whole' | 'unsatisfiable' {
  if (header === null) return 'whole';
  const match = /^bytes=(\d{0,15})-(\d{0,15})$/.exec(header.trim());
  if (match === null) return 'unsatisfiable';
  const [, from = '', to = ''] = match;
  if (from === '') return lastBytes(to, size);
  const first = Number(from);
  const last = to === '' ? size - 1 : Math.min(Number(to), size - 1);
  if (first >= size || (to !== '' && Number(to) < first)) return 'unsatisfiable';
  return { first, last };
}

function lastBytes(count: string, size: number): ByteRange | 'unsatisfiable' {
  const length = count === '' ? 0 : Number(count);
  if (length === 0 || size === 0) return 'unsatisfiable';
  return { first: Math.max(0, size - length), last: size - 1 };
}
