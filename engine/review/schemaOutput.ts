import type * as v from 'valibot';
import type { entrySchema, flagSchema, reviewSchema } from './review.ts';

/** A review as the schema gives it: flags may still lack an id. */
export type ReviewAsRead = v.InferOutput<typeof reviewSchema>;
export type EntryAsRead = v.InferOutput<typeof entrySchema>;
export type FlagAsRead = v.InferOutput<typeof flagSchema>;
