/** Filming: the page that tells a trainee how to film. */
export { filmingCard } from './filmingCard.ts';
export { type LensHeight, lensHeight } from './lensHeight.ts';
