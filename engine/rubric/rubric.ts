import * as v from 'valibot';

/** Severities of a remark, from praise to danger. */
export const severities = ['keep', 'prefer', 'adjust', 'correct', 'stop'] as const;
export const severitySchema = v.picklist(severities);
export type Severity = v.InferOutput<typeof severitySchema>;

/** Name of a criterion in data. */
export const criterionIdSchema = v.pipe(v.string(), v.regex(/^[a-z][A-Za-z]{1,39}$/));
export type CriterionId = v.InferOutput<typeof criterionIdSchema>;

const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
const points = v.pipe(v.number(), v.minValue(0), v.maxValue(100));

export const criterionSchema = v.strictObject({
  id: criterionIdSchema,
  /** Full name, sentence case: "Eccentric tempo". */
  name: v.string(),
  /** What it is called on exercises that have neither one of these patterns nor one of these implements. */
  elsewhere: v.optional(
    v.strictObject({
      name: v.string(),
      unless: v.strictObject({
        patterns: v.optional(v.array(v.string()), []),
        implements: v.optional(v.array(v.string()), []),
      }),
    }),
  ),
  /** What the coach asks while looking. */
  question: v.string(),
  /** The coarser criterion that covers it in a rubric which does not know it. */
  partOf: v.optional(criterionIdSchema),
  /** It is judged on every exercise, from every view, with this share unless the exercise names its own. */
  everywhere: v.optional(v.strictObject({ share })),
  /** What each severity looks like on film: the written anchors a second coach would use. */
  anchors: v.strictObject({
    keep: v.string(),
    prefer: v.string(),
    adjust: v.string(),
    correct: v.string(),
    stop: v.string(),
  }),
});
export type Criterion = v.InferOutput<typeof criterionSchema>;

const exerciseScoreSchema = v.strictObject({
  /** Points lost for each point that the weighted mean lacks to 100. */
  meanShare: share,
  /**
   * Points lost for each point that the lowest criterion (rank 1), the second lowest (2) and so on lacks to `under`; a
   * rank may have several lines.
   */
  lowest: v.array(v.strictObject({ rank: v.pipe(v.number(), v.integer(), v.minValue(1)), under: points, share })),
});

/** A rubric: all numbers of the grading arithmetic, versioned, as data. */
export const rubricSchema = v.strictObject({
  id: v.string(),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  name: v.string(),
  /** What one flag of this severity takes off a rep, as a share of 1. */
  cost: v.strictObject({ keep: share, prefer: share, adjust: share, correct: share, stop: share }),
  /** What has to be looked at to count: the whole of a criterion by any one remark or tick, or each rep for itself. */
  lookedAt: v.optional(v.picklist(['criterion', 'cell'])),
  /** Share of the exercise score that the lowest criterion holds; the rest is the weighted mean. */
  lowestShare: v.optional(share),
  /** In place of `lowestShare`: the exercise score by its weighted mean and by several of its lowest criteria. */
  exerciseScore: v.optional(exerciseScoreSchema),
  /** Highest score left by a stop flag. */
  stopCap: v.strictObject({ exercise: points, session: points }),
  /** Coverage under which a grade is provisional, and under which there is none. */
  coverage: v.strictObject({ provisionalUnder: share, noneUnder: share }),
  /** Scores assumed for what was not looked at, for the range. */
  unseen: v.strictObject({ low: points, high: points }),
  /** Shares of the session score when a plan is known. */
  sessionShare: v.optional(v.strictObject({ technique: share, programme: share })),
  /** In place of `sessionShare`: points that each finding takes off technique, and the most they take together. */
  programmeCost: v.optional(
    v.strictObject({ keep: points, prefer: points, adjust: points, correct: points, stop: points, most: points }),
  ),
  /** Letters from best to worst: lowest score that earns it, and grade points. */
  letters: v.array(v.strictObject({ letter: v.string(), from: points, gradePoints: v.number() })),
  criteria: v.array(criterionSchema),
});
export type Rubric = v.InferOutput<typeof rubricSchema>;

export type ParsedRubric =
  | { readonly ok: true; readonly rubric: Rubric }
  | { readonly ok: false; readonly sentence: string };

const rises = (cost: Readonly<Record<Severity, number>>): boolean =>
  cost.keep === 0 && severities.every((severity, i) => cost[severity] >= cost[severities[i - 1] ?? severity]);

/** Whether one of two ways is given, and not both. */
const isOneOf = (one: unknown, other: unknown): boolean => (one === undefined) !== (other === undefined);

/** What is wrong with a rubric whose shape is right, or null. */
function contradiction(rubric: Rubric): string | null {
  const { cost, letters, criteria, coverage, unseen, sessionShare, programmeCost } = rubric;
  if (!rises(cost)) {
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
  if (!isOneOf(rubric.lowestShare, rubric.exerciseScore)) return 'give lowestShare or exerciseScore, one of the two';
  if (!isOneOf(sessionShare, programmeCost)) return 'give sessionShare or programmeCost, one of the two';
  if (sessionShare !== undefined && Math.abs(sessionShare.technique + sessionShare.programme - 1) > 1e-9) {
    return 'the session shares must add up to 1';
  }
  if (programmeCost !== undefined && !rises(programmeCost)) {
    return 'the costs of the programme must rise from keep (0) over prefer, adjust and correct to stop';
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

/** A score with its mark (`A+` to `F`) and grade points: what a grade says in short. */
export type MarkedScore = { readonly score: number; readonly mark: string; readonly gradePoints: number };

/**
 * Takes off what binary arithmetic adds: the nearest multiple of 1e-9, so that 92.99999999999999 is 93.
 * Every comparison of a score or a coverage with a threshold of the rubric goes through here.
 */
export function withoutNoise(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

/**
 * The mark of a score from 0 to 100. The score itself is compared with the rubric's steps, never a rounded
 * one: 89.9 is a B+ and 90 an A-. Only arithmetic noise under one billionth of a point is forgiven.
 */
export function markFor(score: number, rubric: Rubric): MarkedScore {
  if (!(score >= 0 && score <= 100)) throw new RangeError('A score lies between 0 and 100.');
  const clean = withoutNoise(score);
  const step = rubric.letters.find((known) => clean >= known.from);
  if (step === undefined) throw new RangeError('The rubric has no mark down to 0.');
  return { score, mark: step.letter, gradePoints: step.gradePoints };
}
