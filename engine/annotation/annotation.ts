import type { Language } from '../language/language.ts';

/** Words within an annotation (W3C Web Annotation Data Model, section 3.2.4). */
export type TextualBody = {
  readonly type: 'TextualBody';
  readonly value: string;
  readonly format: 'text/plain';
  readonly language: Language;
  /** People's words may run either way. */
  readonly textDirection: 'auto';
  readonly purpose: 'commenting' | 'tagging';
};

/** A stretch of a clip's file (sections 4 and 4.2.1); without a selector, the file whole. */
export type ClipTarget = {
  readonly type: 'SpecificResource';
  /** The file's name as a relative address. */
  readonly source: string;
  readonly selector?: {
    readonly type: 'FragmentSelector';
    readonly conformsTo: 'http://www.w3.org/TR/media-frags/';
    readonly value: string;
  };
};

/** One flag as an annotation (section 3.1). */
export type Annotation = {
  readonly id: string;
  readonly type: 'Annotation';
  readonly motivation: 'assessing';
  readonly creator?: { readonly type: 'Person'; readonly name: string };
  /** An RFC 3339 time. */
  readonly created?: string;
  readonly body: readonly TextualBody[];
  readonly target: ClipTarget;
};

/** The flags of a review as one page of annotations (section 5.2). */
export type AnnotationPage = {
  readonly '@context': 'http://www.w3.org/ns/anno.jsonld';
  readonly id: string;
  readonly type: 'AnnotationPage';
  readonly partOf: {
    readonly id: string;
    readonly type: 'AnnotationCollection';
    readonly label: string;
    readonly total: number;
  };
  readonly startIndex: 0;
  readonly items: readonly Annotation[];
};
