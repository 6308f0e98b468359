import type { JsonSchema } from '@valibot/to-json-schema';
import { reviewSchema } from '../../engine/review/review.ts';
import { jsonSchemaOf, jsonSchemaText } from './jsonSchemaOf.ts';

/** The published JSON Schema (draft 7) of the review format, made from the schema that the product reads with. */
export const reviewJsonSchema = (): JsonSchema => jsonSchemaOf(reviewSchema, 'Rackside review, version 3');

/** The same as the text of the file in seeds. */
export const reviewJsonSchemaText = (): string => jsonSchemaText(reviewJsonSchema());
