import { create } from 'zustand';
import type { DocumentKind } from '../../electron/contract/documents.ts';

/** What the screen shows: a document as it would be handed over, the letter to be edited, or one that was sent. */
export type LetterView =
  | { readonly kind: 'preview'; readonly document: DocumentKind }
  | { readonly kind: 'editing' }
  | { readonly kind: 'sent'; readonly version: number };

/** The document that a view is about. */
export const documentOf = (view: LetterView): DocumentKind => (view.kind === 'preview' ? view.document : 'letter');

type LetterDesk = {
  readonly view: LetterView;
  /** The paragraph at hand: what commands are about. */
  readonly at: string | null;
  /** The paragraph whose words are being typed. */
  readonly open: string | null;
  /** The paragraph that is to have the focus once the letter is drawn. */
  readonly focus: string | null;
  /** What is asked of the person over the screen. */
  readonly asking: 'nothing' | 'sendAgain' | 'phrases';
};

const atFirst: LetterDesk = {
  view: { kind: 'preview', document: 'letter' },
  at: null,
  open: null,
  focus: null,
  asking: 'nothing',
};

/** Where a person is on the screen of a letter. */
export const letterDesk = create<LetterDesk>()(() => atFirst);

/** As the screen of a letter is opened. */
export const resetLetterDesk = (): void => letterDesk.setState(atFirst);

/** Shows another view; nothing is being typed in it. */
export const showView = (view: LetterView): void => letterDesk.setState({ view, open: null });
