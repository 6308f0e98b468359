/** Counts checks and prints each as a line. */
export type Report = {
  readonly check: (name: string, act: () => Promise<void>) => Promise<void>;
  readonly passed: () => number;
  readonly failed: () => number;
};

export function createReport(print: (line: string) => void): Report {
  let passed = 0;
  let failed = 0;
  return {
    check: async (name, act) => {
      try {
        await act();
        passed += 1;
        print(`ok      ${name}`);
      } catch (error) {
        failed += 1;
        print(`FAILED  ${name}`);
        const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
        for (const line of words.split('\n').slice(0, 12)) print(`        ${line}`);
      }
    },
    passed: () => passed,
    failed: () => failed,
  };
}
