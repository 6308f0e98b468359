import { writeFileSync } from 'node:fs';
import { sheetJsonSchemaText } from './sheetJsonSchema.ts';

// Run by hand after a change of the sheet's JSON: node tests/seeds/writeSheetSchema.ts
writeFileSync(new URL('../../seeds/sheet.schema.json', import.meta.url), sheetJsonSchemaText());
