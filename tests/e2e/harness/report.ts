/** Counts checks and prints each as a line, and how long it took since the last where that is long. */
export type Report = {
  readonly check: (name: string, act: () => Promise<void>) => Promise<void>;
  readonly passed: () => number;
  readonly failed: () => number;
};

/** What takes longer is worth a second look: the whole run has to be short. */
const longS = 4;

export function createReport(print: (line: string) => void): Report {
  let passed = 0;
  let failed = 0;
  let sinceMs = performance.now();
  const took = (): string => {
    const beforeMs = sinceMs;
    sinceMs = performance.now();
    const tookS = Math.round((sinceMs - beforeMs) / 1000);
    return tookS < longS ? '' : ` (${tookS} s)`;
  };
  return {
    check: async (name, act) => {
      try {
        await act();
        passed += 1;
        print(`ok      ${name}${took()}`);
      } catch (error) {
        failed += 1;
        print(`FAILED  ${name}${took()}`);
        const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
        for (const line of words.split('\n').slice(0, 12)) print(`        ${line}`);
      }
    },
    passed: () => passed,
    failed: () => failed,
  };
}
