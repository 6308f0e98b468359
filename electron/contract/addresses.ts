import type { Language } from '../../engine/language/language.ts';
import type { DocumentKind } from './documents.ts';
import type { Scheme } from './shapes.ts';

/** Where the window's page and everything it shows come from: one origin, no network behind it. */
export const appOrigin = 'app://local';

/** The page itself, in a language of the desk. */
export const pageAddress = (language: Language): string => `${appOrigin}/index.html?language=${language}`;

/** Source of a `<video>` that plays a clip; answers byte ranges. */
export const clipAddress = (clipId: string): string => `${appOrigin}/media/${encodeURIComponent(clipId)}`;

/** Source of an `<audio>` that plays what was said over a clip; `narrationId` only makes the address new. */
export const voiceAddress = (clipId: string, narrationId: string): string =>
  `${appOrigin}/voice/${encodeURIComponent(clipId)}?narration=${encodeURIComponent(narrationId)}`;

/** Source of an `<img>` with one picture of a clip; its look (`lookKey`) only makes the address new. */
export const posterAddress = (clipId: string, look = ''): string => pictureAddress(clipId, 'poster', look);

/** Source of an `<img>` with the clip's pictures side by side; its look only makes the address new. */
export const filmstripAddress = (clipId: string, look = ''): string => pictureAddress(clipId, 'filmstrip', look);

const pictureAddress = (clipId: string, what: 'poster' | 'filmstrip', look: string): string =>
  `${appOrigin}/pictures/${encodeURIComponent(clipId)}/${what}${look === '' ? '' : `?look=${encodeURIComponent(look)}`}`;

const inScheme = (scheme: Scheme | undefined): string => (scheme === undefined ? '' : `&scheme=${scheme}`);

/** Source of an `<img>` with one picture of a file in the inbox, or its pictures side by side. */
export const arrivalAddress = (arrivalId: string, what: 'poster' | 'filmstrip'): string =>
  `${appOrigin}/inbox/${encodeURIComponent(arrivalId)}/${what}`;

/** Source of an `<iframe sandbox>` that shows a letter as it was sent; without a scheme in the device's. */
export const sentAddress = (sessionId: string, version: number, scheme?: Scheme): string =>
  `${appOrigin}/preview/${encodeURIComponent(sessionId)}/sent-${version}?revision=0${inScheme(scheme)}`;

/**
 * Source of an `<iframe sandbox>` that shows a document with its own inline styles. The page's own content
 * policy refuses inline styles, so a document can't be shown through `srcdoc`. `revision` only makes the address new when
 * the document has changed.
 */
export const previewAddress = (
  sessionId: string,
  document: DocumentKind,
  { revision = 0, scheme }: { readonly revision?: number; readonly scheme?: Scheme | undefined } = {},
): string =>
  `${appOrigin}/preview/${encodeURIComponent(sessionId)}/${document}?revision=${revision}${inScheme(scheme)}`;
