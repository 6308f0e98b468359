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

/** Writes a tempo as "3-1-X-0", tenths of a second where there are any. */
export function printTempo(tempo: Tempo): string {
  const slot = (seconds: number | null) => (seconds === null ? 'X' : String(Math.round(seconds * 10) / 10));
  return [tempo.eccentricS, tempo.longPauseS, tempo.concentricS, tempo.shortPauseS].map(slot).join('-');
}

/** Seconds of one repetition; null for an X concentric, unless the seconds to assume for it are given. */
export function repSeconds(tempo: Tempo, assumedConcentricS: number | null = null): number | null {
  const concentricS = tempo.concentricS ?? assumedConcentricS;
  if (concentricS === null) return null;
  const tenths = [tempo.eccentricS, tempo.longPauseS, concentricS, tempo.shortPauseS].map((seconds) => seconds * 10);
  return Math.round(tenths.reduce((sum, one) => sum + one, 0)) / 10;
}

/** Seconds under tension of a set: repetitions one after another, pauses included. Null as for `repSeconds`. */
export function timeUnderTensionS(tempo: Tempo, reps: number, assumedConcentricS: number | null = null): number | null {
  const oneS = repSeconds(tempo, assumedConcentricS);
  return oneS === null ? null : Math.round(oneS * reps * 10) / 10;
}
