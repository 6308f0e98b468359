import { defineConfig } from 'vitest/config';

const test = { testTimeout: 300_000, hookTimeout: 300_000 };

export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        test: {
          ...test,
          name: 'pure',
          include: ['tests/{engine,published,seeds}/**/*.test.ts'],
          // What is pure bears other tests in the same process; loading it anew for each file takes longer than testing it.
          isolate: false,
        },
      },
      { test: { ...test, name: 'world', include: ['tests/{electron,renderer}/**/*.test.{ts,tsx}'] } },
    ],
  },
});
