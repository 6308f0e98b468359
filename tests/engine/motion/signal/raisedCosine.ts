/** A movement of raised-cosine height between two rests: it starts at `restS` and takes `durationS`. */
export type RaisedCosine = {
  readonly romM: number;
  readonly durationS: number;
  readonly restS: number;
  readonly sampleHz: number;
};

/** Its height in metres at even times, from rest to rest. */
export function raisedCosine({ romM, durationS, restS, sampleHz }: RaisedCosine): number[] {
  const samples = Math.round((2 * restS + durationS) * sampleHz) + 1;
  return Array.from({ length: samples }, (_, i) => {
    const share = Math.min(1, Math.max(0, (i / sampleHz - restS) / durationS));
    return (romM / 2) * (1 - Math.cos(Math.PI * share));
  });
}
