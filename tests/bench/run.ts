import { desk } from './desk.ts';
import { benchHandover } from './handover.ts';
import { benchJoints } from './joints.ts';
import { measure } from './measure.ts';
import { regrade } from './regrade.ts';
import { truth } from './truth.ts';

const benches = [regrade, desk, measure, benchJoints, benchHandover, truth];

/** Runs the benches named, or all, and prints each ratio beside its goal. Nothing passes or fails by time. */
const given = process.argv.slice(2);
const firstOption = given.findIndex((argument) => argument.startsWith('--'));
const wanted = firstOption < 0 ? given : given.slice(0, firstOption);
const options = given.slice(wanted.length);
const chosen = benches.filter(({ name }) => wanted.length === 0 || wanted.includes(name));
if (chosen.length === 0) {
  process.stderr.write(`No such bench; there are: ${benches.map(({ name }) => name).join(', ')}\n`);
  process.exit(2);
}
for (const { name, about, run } of chosen) {
  if (!options.includes('--json')) process.stdout.write(`\n${name}: ${about}\n`);
  for (const { what, ratio, goal } of await run(options)) {
    const met = ratio <= goal ? 'met' : 'missed';
    process.stdout.write(`  ${ratio.toFixed(3).padStart(9)}  goal ≤ ${goal}  ${met.padEnd(6)}  ${what}\n`);
  }
}
