import * as v from 'valibot';

/** A caution to print where it applies. */
export const cautionSchema = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{1,59}$/)),
  topic: v.string(),
  /** Plain sentences, printed as they are. */
  text: v.string(),
  source: v.string(),
  /** When it is printed: always, with a pain note, with a stop flag, for minors, or for exercises that name it. */
  applies: v.picklist(['always', 'pain', 'stop', 'minor', 'exercise']),
});
export type Caution = v.InferOutput<typeof cautionSchema>;
