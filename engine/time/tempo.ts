/** Times of one repetition in seconds of lifting time; `concentricS` null = X, as fast as control allows. */
export type Tempo = {
  readonly eccentricS: number;
  readonly pauseStretchedS: number;
  readonly concentricS: number | null;
  readonly pauseShortenedS: number;
};

const slots = /^(\d{1,2}(?:\.\d)?)-(\d{1,2}(?:\.\d)?)-(X|\d{1,2}(?:\.\d)?)-(\d{1,2}(?:\.\d)?)$/;

/** Reads "3-1-X-0": eccentric; pause, stretched; concentric; pause, shortened. Null when it is not written so. */
export function parseTempo(text: string): Tempo | null {
  const [, eccentric, pauseStretched, concentric, pauseShortened] = slots.exec(text) ?? [];
  if (concentric === undefined) return null;
  return {
    eccentricS: Number(eccentric),
    pauseStretchedS: Number(pauseStretched),
    concentricS: concentric === 'X' ? null : Number(concentric),
    pauseShortenedS: Number(pauseShortened),
  };
}
