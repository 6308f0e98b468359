import type { Catalogue } from '../exercises/catalogue.ts';
import type { Language } from '../language/language.ts';
import { endOfClipUs } from '../review/parts.ts';
import type { Clip, ClipFacts, Review } from '../review/review.ts';
import { type FlagRow, flagRows } from '../sheet/flagRows.ts';
import { type SheetLanguage, sayReps, sheetLanguage } from '../sheet/sheetLanguage.ts';
import { fragmentWithin, printTimeFragment } from '../time/writtenTime.ts';

export type AnnotationOptions = {
  /** Names of the clips' files as they lie beside the page, by the clip's id; else the path the review gives, else the clip's name. */
  readonly files?: ReadonlyMap<string, string>;
  /** When the review was made, as an RFC 3339 time; left out without it. */
  readonly created?: string;
};

/** How much of the clip from its moment on an annotation speaks of. */
const stretchUs = 2_000_000;

/** A name as a path within an address: what has a meaning there is escaped. */
const addressOf = (name: string): string => name.toWellFormed().split('/').map(encodeURIComponent).join('/');

/**
 * An IRI that stays the same for the same thing (RFC 4151, tag). It is looked up nowhere: `invalid` can belong to nobody
 * (RFC 2606, section 2).
 */
const iri = (...path: readonly string[]): string =>
  `tag:rackside.invalid,2026:${path.map((part) => encodeURIComponent(part.toWellFormed())).join('/')}`;

/** From the flag's moment on, within the clip; of a moment that the clip does not reach, the last of it. */
function stretch(us: number, facts: ClipFacts | undefined): string {
  const endUs = endOfClipUs(facts) ?? Infinity;
  const startUs = us < endUs ? us : Math.max(0, endUs - stretchUs);
  return printTimeFragment(fragmentWithin({ startUs, endUs: startUs + stretchUs }, endUs));
}

function targetOf({ us, clip, clipName }: FlagRow, known: Clip | undefined, options: AnnotationOptions): ClipTarget {
  const source = addressOf(options.files?.get(clip) ?? known?.path ?? clipName);
  if (us === null) return { type: 'SpecificResource', source };
  const value = stretch(us, known?.facts);
  const selector = { type: 'FragmentSelector', conformsTo: 'http://www.w3.org/TR/media-frags/', value } as const;
  return { type: 'SpecificResource', source, selector };
}

const bodyOf = (value: string, purpose: TextualBody['purpose'], language: Language): TextualBody => ({
  type: 'TextualBody',
  value: value.toWellFormed(),
  format: 'text/plain',
  language,
  textDirection: 'auto',
  purpose,
});

/** What was seen, the coach's words and the cue, each a body of its own; then what they are about. */
function bodiesOf(row: FlagRow, sheet: SheetLanguage): TextualBody[] {
  const { language, severityText } = sheet;
  const words = [row.seen, row.note, row.cue].filter((each) => each.trim() !== '');
  const about = [row.criterionName, severityText(row.severity), sayReps(row, sheet)];
  return [
    ...words.map((each) => bodyOf(each, 'commenting', language)),
    ...about.map((each) => bodyOf(each, 'tagging', language)),
  ];
}

/**
 * The flags of a review as W3C Web Annotations (JSON-LD): each targets a stretch of its clip's file by a media fragment,
 * with what was seen, the coach's words and the cue as text in the catalogue's language, and criterion, severity and reps
 * as tags. A flag whose time is not known targets the file whole.
 */
export function annotationPage(review: Review, catalogue: Catalogue, options: AnnotationOptions = {}): AnnotationPage {
  const sheet = sheetLanguage(catalogue.language ?? 'en');
  const clips = new Map(review.entries.flatMap((entry) => entry.clips).map((clip) => [clip.id, clip]));
  const name = review.voice === 'self' ? review.trainee.name : review.coach;
  const session = [review.session.id, review.session.date];
  const items = flagRows(review, catalogue).map(
    (row): Annotation => ({
      id: iri(...session, 'flags', row.flagId),
      type: 'Annotation',
      motivation: row.severity === null ? 'commenting' : 'assessing',
      ...(name === undefined ? {} : { creator: { type: 'Person', name: name.toWellFormed() } }),
      ...(options.created === undefined ? {} : { created: options.created }),
      body: bodiesOf(row, sheet),
      target: targetOf(row, clips.get(row.clip), options),
    }),
  );
  const label = sheet.say('title', {
    voice: review.voice,
    trainee: review.trainee.name.toWellFormed(),
    date: sheet.format.date(review.session.date),
  });
  return {
    '@context': 'http://www.w3.org/ns/anno.jsonld',
    id: iri(...session, 'page'),
    type: 'AnnotationPage',
    partOf: { id: iri(...session, 'flags'), type: 'AnnotationCollection', label, total: items.length },
    startIndex: 0,
    items,
  };
}

/** The page as the text of a JSON-LD file. */
export function annotationJson(...page: Parameters<typeof annotationPage>): string {
  return `${JSON.stringify(annotationPage(...page), null, 1)}\n`;
}

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
  /** A plain note assesses nothing. */
  readonly motivation: 'assessing' | 'commenting';
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
