import { sheetSchema } from '../../engine/sheet/sheetJsonSchema.ts';
import { jsonSchemaOf, jsonSchemaText } from './jsonSchemaOf.ts';

/** The published JSON Schema (draft 7) of the sheet's JSON as the text of the file in seeds. */
export const sheetJsonSchemaText = (): string => jsonSchemaText(jsonSchemaOf(sheetSchema, 'Rackside sheet, version 2'));
