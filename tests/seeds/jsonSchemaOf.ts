import { type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import type { GenericSchema } from 'valibot';

/**
 * What JSON Schema has no words for: JSON has no other numbers than finite ones, a schema tells what is read, not what it
 * becomes, and one field can't be held against another.
 */
const implied = new Set(['finite', 'trim', 'normalize', 'transform', 'check']);

/** The JSON Schema (draft 7) of what a schema of the product takes. */
export function jsonSchemaOf(schema: GenericSchema, title: string): JsonSchema {
  const written = toJsonSchema(schema, {
    target: 'draft-07',
    overrideAction: ({ valibotAction, jsonSchema }) => {
      if (implied.has(valibotAction.type)) return jsonSchema;
      if (valibotAction.type !== 'safe_integer') return undefined;
      const most = Number.MAX_SAFE_INTEGER;
      return { ...jsonSchema, type: 'integer', minimum: -most, maximum: most };
    },
  });
  return { ...written, title };
}

/** The same as the text of a file in seeds. */
export const jsonSchemaText = (schema: JsonSchema): string => `${JSON.stringify(schema, null, 1)}\n`;
