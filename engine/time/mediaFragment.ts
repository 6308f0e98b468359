/** A stretch of a clip, start included, end not; `endUs` null = to the end. Media microseconds. */
export type TimeFragment = { readonly startUs: number; readonly endUs: number | null };

const printSeconds = (us: number): string => {
  const fraction = String(us % 1_000_000)
    .padStart(6, '0')
    .replace(/0+$/, '');
  return `${Math.floor(us / 1_000_000)}${fraction === '' ? '' : `.${fraction}`}`;
};

/** A stretch as "t=12.4,14.1", or "t=12.4" to the end. `startUs` is 0 or more, `endUs` after it. */
export function printTimeFragment({ startUs, endUs }: TimeFragment): string {
  return `t=${printSeconds(startUs)}${endUs === null ? '' : `,${printSeconds(endUs)}`}`;
}

/** A stretch laid on a clip: an end past the clip is the clip's end, and so is a start past it. */
export function fragmentWithin(fragment: TimeFragment, durationUs: number): { startUs: number; endUs: number } {
  const startUs = Math.min(fragment.startUs, durationUs);
  return { startUs, endUs: Math.min(fragment.endUs ?? durationUs, durationUs) };
}
