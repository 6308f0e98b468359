import * as v from 'valibot';

const asking = v.object({ rubric: v.object({ version: v.pipe(v.number(), v.integer(), v.minValue(1)) }) });

/** The rubric version that data which claims to be a review asks for; undefined when it names none. */
export function rubricVersionOf(input: unknown): number | undefined {
  const parsed = v.safeParse(asking, input);
  return parsed.success ? parsed.output.rubric.version : undefined;
}
