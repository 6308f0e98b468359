import { writeFileSync } from 'node:fs';
import { reviewJsonSchemaText } from './reviewJsonSchema.ts';

// Run by hand after a change of the review format: node tests/seeds/writeReviewSchema.ts
writeFileSync(new URL('../../seeds/review.schema.json', import.meta.url), reviewJsonSchemaText());
