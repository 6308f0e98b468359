import { availableParallelism } from 'node:os';
import { buildChanged } from '../../electron/launch/buildChanged.ts';
import { findRuntime } from '../../electron/launch/runtime.ts';
import { memoryEnvironment } from '../memoryFolder.ts';
import { type Bench, createBench } from './harness/bench.ts';
import { type Display, openDisplay } from './harness/display.ts';
import { endNow, isAlive, processTree } from './harness/processes.ts';
import { createReport, type Report } from './harness/report.ts';
import type { Scenario } from './harness/scenario.ts';
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
  Object.assign(process.env, memoryEnvironment());
  await buildChanged();
  const { executable } = await findRuntime();
  const lanes = await Promise.all(
    Array.from({ length: Math.min(mostLanes, availableParallelism(), chosen.length) }, () => openLane(executable)),
  );
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.once(signal, () => void interrupted(lanes).finally(() => process.exit(1)));
  }
  const left = [...chosen];
  const reports: Report[] = [];
  try {
    await Promise.all(
      lanes.map(async ({ bench }) => {
        for (let scenario = left.shift(); scenario !== undefined; scenario = left.shift()) {
          reports.push(await runOne(scenario, bench));
        }
      }),
    );
  } finally {
    await close(lanes);
  }
  const sum = (count: (report: Report) => number): number => reports.reduce((all, report) => all + count(report), 0);
  const [passed, failed] = [sum((report) => report.passed()), sum((report) => report.failed())];
  process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
  return failed === 0 && passed > 0 ? 0 : 1;
}

/** So many scenarios run beside each other, each on a display of its own: most of their time they wait. */
const mostLanes = 3;

type Lane = { readonly bench: Bench; readonly display: Display };

async function openLane(executable: string): Promise<Lane> {
  const display = await openDisplay();
  return { display, bench: await createBench(executable, display.environment) };
}

async function close(lanes: readonly Lane[]): Promise<void> {
  await Promise.all(lanes.map(({ bench }) => bench.clear()));
  for (const { display } of lanes) display.stop();
}

/** Runs a scenario; its lines are printed together once it has ended. */
async function runOne(scenario: Scenario, bench: Bench): Promise<Report> {
  const lines: string[] = [];
  const report = createReport((line) => lines.push(line));
  const since = performance.now();
  try {
    await scenario.run(bench, report);
  } catch (error) {
    await report.check('the scenario comes to its end', () => Promise.reject(error));
  }
  const tookS = Math.round((performance.now() - since) / 1000);
  process.stdout.write(`\n${scenario.name} (${tookS} s)\n${lines.map((line) => `${line}\n`).join('')}`);
  return report;
}

/** Takes along everything this run has started, also an app that is only half-way up. */
async function interrupted(lanes: readonly Lane[]): Promise<void> {
  for (const { bench } of lanes) bench.end();
  await until('every process to be gone', async () => {
    const children = (await processTree(process.pid)).filter((id) => id !== process.pid);
    for (const id of children.reverse()) endNow(id);
    return !(await Promise.all(children.map(isAlive))).includes(true);
  });
  await close(lanes);
}

process.exit(await run());
