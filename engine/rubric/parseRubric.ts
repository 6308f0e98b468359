import * as v from 'valibot';
import { type Rubric, rubricSchema } from './rubric.ts';

export type ParsedRubric =
  | { readonly ok: true; readonly rubric: Rubric }
  | { readonly ok: false; readonly sentence: string };

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

/** What is wrong with a rubric whose shape is right, or null. */
function contradiction(rubric: Rubric): string | null {
  const { cost, letters, criteria, coverage, unseen, sessionShare } = rubric;
  if (!(cost.keep === 0 && cost.prefer <= cost.adjust && cost.adjust <= cost.correct && cost.correct <= cost.stop)) {
    return 'the costs must rise from keep (0) over prefer, adjust and correct to stop';
  }
  if (letters.at(-1)?.from !== 0) return 'the last letter must begin at 0';
  if (letters.some((letter, i) => i > 0 && letter.from >= (letters[i - 1]?.from ?? 0))) {
    return 'the letters must fall from best to worst';
  }
  if (new Set(letters.map((letter) => letter.letter)).size !== letters.length) return 'a letter appears twice';
  if (criteria.length === 0) return 'it judges nothing: add a criterion';
  if (new Set(criteria.map((criterion) => criterion.id)).size !== criteria.length) return 'a criterion appears twice';
  if (coverage.noneUnder > coverage.provisionalUnder) return 'noneUnder must not be above provisionalUnder';
  if (unseen.low > unseen.high) return 'unseen.low must not be above unseen.high';
  if (Math.abs(sum([sessionShare.technique, sessionShare.programme]) - 1) > 1e-9) {
    return 'the session shares must add up to 1';
  }
  return null;
}

/** Checks a rubric read from outside: its shape, then that its numbers don't contradict each other. */
export function parseRubric(input: unknown): ParsedRubric {
  const parsed = v.safeParse(rubricSchema, input, { abortEarly: true });
  if (!parsed.success) {
    const place = v.getDotPath(parsed.issues[0]) ?? 'its top level';
    return { ok: false, sentence: `The rubric can't be used: something is wrong at ${place}.` };
  }
  const wrong = contradiction(parsed.output);
  if (wrong !== null) return { ok: false, sentence: `The rubric can't be used: ${wrong}.` };
  return { ok: true, rubric: parsed.output };
}
