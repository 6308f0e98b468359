import { type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import { reviewSchema } from '../../engine/review/index.ts';

/** The checks JSON Schema has no words for; JSON itself has no other numbers than finite ones. */
const implied = new Set(['finite', 'trim']);

/** The published JSON Schema (draft 7) of the review format, made from the schema that the product reads with. */
export function reviewJsonSchema(): JsonSchema {
  const schema = toJsonSchema(reviewSchema, {
    target: 'draft-07',
    overrideAction: ({ valibotAction, jsonSchema }) => {
      if (implied.has(valibotAction.type)) return jsonSchema;
      if (valibotAction.type !== 'safe_integer') return undefined;
      const most = Number.MAX_SAFE_INTEGER;
      return { ...jsonSchema, type: 'integer', minimum: -most, maximum: most };
    },
  });
  return { ...schema, title: 'Rackside review, version 1' };
}

/** The same as the text of the file in seeds. */
export function reviewJsonSchemaText(): string {
  return `${JSON.stringify(reviewJsonSchema(), null, 1)}\n`;
}
