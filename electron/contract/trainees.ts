import * as v from 'valibot';
import { equipmentSchema } from '../../engine/exercises/equipment.ts';
import { goalSchema } from '../../engine/exercises/exercise.ts';
import { act } from './kinds.ts';
import { id, name, nameModeSchema, none } from './shapes.ts';

export const traineeSchema = v.strictObject({
  id,
  name,
  goal: goalSchema,
  experience: v.picklist(['new', 'experienced']),
  units: v.picklist(['kg', 'lb']),
  minor: v.boolean(),
  /** What the trainee has to train with; absent where that is not stated. */
  equipment: v.optional(equipmentSchema),
});
export type Trainee = v.InferOutput<typeof traineeSchema>;
/** A trainee with how they want to be named in what leaves the desk. */
export const namedTraineeSchema = v.strictObject({ ...traineeSchema.entries, names: nameModeSchema });
export type NamedTrainee = v.InferOutput<typeof namedTraineeSchema>;

export const traineeRequests = {
  'trainees.add': act({
    params: v.strictObject({
      ...v.omit(traineeSchema, ['id']).entries,
      names: v.optional(nameModeSchema, 'full'),
    }),
    result: v.strictObject({ traineeId: id }),
  }),
  /** Changes what is known of a trainee; every session of theirs is judged anew. */
  'trainees.update': act({
    params: v.strictObject({
      traineeId: id,
      goal: v.optional(goalSchema),
      experience: v.optional(traineeSchema.entries.experience),
      units: v.optional(traineeSchema.entries.units),
      minor: v.optional(v.boolean()),
      /** Null = not stated. */
      equipment: v.optional(v.nullable(equipmentSchema)),
    }),
    result: none,
  }),
  /** Changes how a trainee is named in what leaves the desk. */
  'trainees.names': act({ params: v.strictObject({ traineeId: id, names: nameModeSchema }), result: none }),
} as const;
