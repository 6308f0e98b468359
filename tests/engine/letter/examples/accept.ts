import { writeFileSync } from 'node:fs';
import { examples, fileOf, letterOfExample } from './sessions.ts';

/** Keeps the letters as they are written now. Read them first: this says that you would send them. */
for (const example of examples) writeFileSync(fileOf(example), letterOfExample(example));
