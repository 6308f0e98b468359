/** 1 up to `full`, 0 from `none` on, and evenly less in between. */
export const fade = (value: number, full: number, none: number): number =>
  Math.min(1, Math.max(0, (none - value) / (none - full)));
