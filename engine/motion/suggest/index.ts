/** Suggestions: the flags that the measures of a set propose, each with the number behind it. */
export { type AskedPhase, askedTempo } from './askedTempo.ts';
export { type SuggestRequest, suggest } from './suggest.ts';
