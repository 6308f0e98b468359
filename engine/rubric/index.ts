/** The judging scheme: its types, reading it, and the letter of a score. */
export { diffRubrics, type RubricDifference } from './diffRubrics.ts';
export { letterFor, type Mark, withoutNoise } from './letterFor.ts';
export { type ParsedRubric, parseRubric } from './parseRubric.ts';
export * from './rubric.ts';
export { shownScore } from './shownScore.ts';
