import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { lostAfter, workUnderStrain } from './strained.ts';
import type { Round, StrainOrder } from './strainOrder.ts';

/** Works on a disk of its own that is full but for so many pages; a line of JSON a run. */
const order = JSON.parse(process.argv[2] ?? '') as StrainOrder;
const disk = path.dirname(order.library);
const ballast = path.join(disk, 'ballast');

if (order.free === null) {
  // Whoever runs it has the calls fail; it is looked at afterwards.
  process.stdout.write(`${JSON.stringify(await workUnderStrain(order))}\n`);
  process.exit(0);
}
// This process has a view of the mounts that is its own.
execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=48m', 'tmpfs', disk]);
for (const free of order.free) {
  for (const name of readdirSync(disk)) rmSync(path.join(disk, name), { recursive: true });
  cpSync(order.seed, order.library, { recursive: true });
  mkdirSync(order.out);
  const { bavail, bsize } = statfsSync(disk);
  writeFileSync(ballast, Buffer.alloc(Math.max(0, (bavail - free) * bsize)));
  const strained = await workUnderStrain(order);
  rmSync(ballast);
  const { flags, imported, handedOver, refused, wrong } = strained;
  const acknowledged = flags.length + Number(imported) + Number(handedOver);
  const round: Round = { free, acknowledged, refused, wrong: [...wrong, ...(await lostAfter(order, strained))] };
  process.stdout.write(`${JSON.stringify(round)}\n`);
}
process.exit(0);
