/** Flags proposed from measures: a set against its exercise's targets or its plan, each with its number and a sentence. */
export { type SuggestFrom, suggest } from './suggest.ts';
