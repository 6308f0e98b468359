import { defineConfig } from 'vitest/config';
import { memoryEnvironment } from './tests/memoryFolder.ts';

const test = { testTimeout: 300_000, hookTimeout: 300_000, env: { ...memoryEnvironment() } };

export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        test: {
          ...test,
          name: 'together',
          include: ['tests/{engine,published,seeds,electron,trust}/**/*.test.ts'],
          // These bear each other in the same process, and loading all anew for each file takes as long as testing it.
          isolate: false,
        },
      },
      { test: { ...test, name: 'apart', include: ['tests/renderer/**/*.test.{ts,tsx}'] } },
    ],
  },
});
