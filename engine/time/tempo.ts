/** Times of one repetition in seconds of lifting time; `concentricS` null = X, as fast as control allows. */
export type Tempo = {
  readonly eccentricS: number;
  readonly longPauseS: number;
  readonly concentricS: number | null;
  readonly shortPauseS: number;
};

const slots = /^(\d{1,2}(?:\.\d)?)-(\d{1,2}(?:\.\d)?)-(X|\d{1,2}(?:\.\d)?)-(\d{1,2}(?:\.\d)?)$/;

/** Reads "3-1-X-0": eccentric, long pause, concentric, short pause. Null when it is not written so. */
export function parseTempo(text: string): Tempo | null {
  const [, eccentric, longPause, concentric, shortPause] = slots.exec(text) ?? [];
  if (concentric === undefined) return null;
  return {
    eccentricS: Number(eccentric),
    longPauseS: Number(longPause),
    concentricS: concentric === 'X' ? null : Number(concentric),
    shortPauseS: Number(shortPause),
  };
}
