import { desk } from './desk.ts';
import { benchHandover } from './handover.ts';
import { benchJoints } from './joints.ts';
import { measure } from './measure.ts';
import { regrade } from './regrade.ts';

const benches = [regrade, desk, measure, benchJoints, benchHandover];

/** Runs the benches named, or all, and prints each ratio beside its goal. Nothing passes or fails by time. */
const wanted = process.argv.slice(2);
const chosen = benches.filter(({ name }) => wanted.length === 0 || wanted.includes(name));
if (chosen.length === 0) {
  process.stderr.write(`No such bench; there are: ${benches.map(({ name }) => name).join(', ')}\n`);
  process.exit(2);
}
for (const { name, about, run } of chosen) {
  process.stdout.write(`\n${name}: ${about}\n`);
  for (const { what, ratio, goal } of await run()) {
    const met = ratio <= goal ? 'met' : 'missed';
    process.stdout.write(`  ${ratio.toFixed(3).padStart(9)}  goal ≤ ${goal}  ${met.padEnd(6)}  ${what}\n`);
  }
}
