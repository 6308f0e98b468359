import * as v from 'valibot';
import { equipmentSchema } from '../../engine/exercises/equipment.ts';
import { goalSchema } from '../../engine/exercises/exercise.ts';
import { act } from './kinds.ts';
import { id, name, nameModeSchema, none, remark } from './shapes.ts';

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
/** A trainee as the desk has them: beside what is known of them, what never leaves it. */
export const namedTraineeSchema = v.strictObject({
  ...traineeSchema.entries,
  /** How they want to be named in what leaves the desk. */
  names: nameModeSchema,
  /** The coach's own notes; they never leave the desk. */
  notes: remark,
  /** Off the desk and out of every choice, until brought back. */
  archived: v.boolean(),
});
export type NamedTrainee = v.InferOutput<typeof namedTraineeSchema>;

export const traineeRequests = {
  'trainees.add': act({
    params: v.strictObject({
      ...v.omit(traineeSchema, ['id']).entries,
      names: v.optional(nameModeSchema, 'full'),
      notes: v.optional(remark, ''),
    }),
    result: v.strictObject({ traineeId: id }),
  }),
  /** Changes what is known of a trainee; every session of theirs is judged anew. */
  'trainees.update': act({
    params: v.strictObject({
      traineeId: id,
      name: v.optional(name),
      goal: v.optional(goalSchema),
      experience: v.optional(traineeSchema.entries.experience),
      units: v.optional(traineeSchema.entries.units),
      minor: v.optional(v.boolean()),
      /** Null = not stated. */
      equipment: v.optional(v.nullable(equipmentSchema)),
      notes: v.optional(remark),
      archived: v.optional(v.boolean()),
    }),
    result: none,
  }),
  /** Changes how a trainee is named in what leaves the desk. */
  'trainees.names': act({ params: v.strictObject({ traineeId: id, names: nameModeSchema }), result: none }),
} as const;
