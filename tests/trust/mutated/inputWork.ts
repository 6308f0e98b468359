/** One input for the reader, and how it is given to the app. */
export type Input = {
  readonly id: number;
  readonly kind: 'review' | 'handover' | 'film' | 'filmIntoSession';
  readonly file: string;
};

/** What the app made of it. */
export type Answer = {
  readonly id: number;
  readonly result: 'taken' | 'refused' | 'broken';
  /** The sentence of a refusal, or what broke. */
  readonly said: string;
  readonly rssMb: number;
};
