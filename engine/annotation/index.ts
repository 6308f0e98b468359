/** Annotations: the flags of a review as W3C Web Annotations on its clips. */
export type { Annotation, AnnotationPage, ClipTarget, TextualBody } from './annotation.ts';
export { type AnnotationOptions, annotationJson, annotationPage } from './annotationPage.ts';
