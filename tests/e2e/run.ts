import { buildChanged } from '../../electron/launch/buildChanged.ts';
import { findRuntime } from '../../electron/launch/runtime.ts';
import { type Bench, createBench } from './harness/bench.ts';
import { openDisplay } from './harness/display.ts';
import { endNow, isAlive, processTree } from './harness/processes.ts';
import { createReport } from './harness/report.ts';
import { until } from './harness/until.ts';
import { onRequest, scenarios } from './scenarios/index.ts';

/** Runs the scenarios named as arguments, or all of them, against the real app. */
async function run(): Promise<number> {
  const wanted = process.argv.slice(2);
  const chosen =
    wanted.length === 0 ? scenarios : [...scenarios, ...onRequest].filter(({ name }) => wanted.includes(name));
  if (chosen.length === 0) {
    process.stderr.write(
      `No such scenario; there are: ${[...scenarios, ...onRequest].map(({ name }) => name).join(', ')}\n`,
    );
    return 2;
  }
  await buildChanged();
  const runtime = await findRuntime();
  const display = await openDisplay();
  const bench = await createBench(runtime.executable, display.environment);
  const report = createReport((line) => process.stdout.write(`${line}\n`));
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.once(signal, () => void interrupted(bench).finally(() => process.exit(1)));
  }
  try {
    for (const scenario of chosen) {
      process.stdout.write(`\n${scenario.name}\n`);
      try {
        await scenario.run(bench, report);
      } catch (error) {
        await report.check('the scenario comes to its end', () => Promise.reject(error));
      }
    }
  } finally {
    await bench.clear();
    display.stop();
  }
  process.stdout.write(`\n${report.passed()} passed, ${report.failed()} failed\n`);
  return report.failed() === 0 && report.passed() > 0 ? 0 : 1;
}

/** Takes along everything this run has started, also an app that is only half-way up. */
async function interrupted(bench: Bench): Promise<void> {
  bench.end();
  await until('every process to be gone', async () => {
    const children = (await processTree(process.pid)).filter((id) => id !== process.pid);
    for (const id of children.reverse()) endNow(id);
    return !(await Promise.all(children.map(isAlive))).includes(true);
  });
  await bench.clear();
}

process.exit(await run());
