import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { examples, fileOf, letterOfExample } from './examples/sessions.ts';

it.each(examples.map((example) => [example.name, example] as const))(
  'the letter %s is the one that was read and would be sent; read the difference before you run examples/accept.ts',
  (_, example) => {
    expect(letterOfExample(example)).toBe(readFileSync(fileOf(example), 'utf8'));
  },
);
