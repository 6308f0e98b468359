/** Text within a block. A `time` piece points at a moment of a clip. */
export type Inline =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'strong'; readonly text: string }
  | { readonly kind: 'emphasis'; readonly text: string }
  | { readonly kind: 'time'; readonly clip: string; readonly us: number; readonly text: string };

export type Block =
  | { readonly kind: 'heading'; readonly level: 2 | 3; readonly id: string; readonly text: string }
  /** `id` names the paragraph's place in the plan, so that an edit can be kept beside it. */
  | { readonly kind: 'paragraph'; readonly id: string; readonly inlines: readonly Inline[] }
  | {
      readonly kind: 'list';
      readonly id: string;
      readonly ordered: boolean;
      readonly items: readonly (readonly Inline[])[];
    }
  | {
      readonly kind: 'table';
      readonly id: string;
      readonly caption: string;
      readonly columns: readonly { readonly label: string; readonly align: 'start' | 'end' }[];
      readonly rows: readonly (readonly (readonly Inline[])[])[];
    }
  | {
      readonly kind: 'picture';
      readonly id: string;
      readonly source: string;
      readonly alt: string;
      readonly caption: string;
    }
  /** Set apart and never to be left out: cautions. */
  | {
      readonly kind: 'notice';
      readonly id: string;
      readonly title: string;
      readonly paragraphs: readonly (readonly Inline[])[];
    };

/** One document, from which every format is written. */
export type RacksideDocument = {
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  readonly author: string;
  /** ISO date of the session. */
  readonly date: string;
  readonly blocks: readonly Block[];
};
