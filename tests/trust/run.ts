import { mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { buildChanged } from '../../electron/launch/buildChanged.ts';
import { rootFolder } from '../../electron/launch/folders.ts';
import { NotHere, type Proof } from './harness/proof.ts';
import { randomOf } from './harness/random.ts';
import { type SeedLibrary, seedLibrary } from './harness/seedLibrary.ts';
import { isHeld, linesByProof, linesOf, type Outcome, tableOf } from './harness/table.ts';
import { timeLeft } from './harness/timeLeft.ts';
import { proofs } from './proofs.ts';

/** So many proofs run beside each other. */
const lanes = 2;

const guide = path.join(rootFolder, 'tests/trust/FIGURES.md');
const [begins, ends] = ['<!-- figures -->', '<!-- end of figures -->'];

/** Runs the proofs named as arguments, or all of them, and prints their figures. */
async function run(): Promise<number> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      long: { type: 'boolean', default: false },
      seed: { type: 'string', default: '20261130' },
      minutes: { type: 'string', default: '60' },
      record: { type: 'boolean', default: false },
    },
  });
  const chosen = positionals.length === 0 ? proofs : proofs.filter(({ name }) => positionals.includes(name));
  if (chosen.length === 0) {
    process.stderr.write(`No such proof; there are: ${proofs.map(({ name }) => name).join(', ')}\n`);
    return 2;
  }
  await buildChanged();
  const started = new Date();
  const length = {
    long: values.long,
    seed: Number(values.seed),
    endMs: performance.now() + Number(values.minutes) * 60_000,
  };
  const said = values.long ? 'whole' : 'short';
  process.stdout.write(`${said}, seed ${values.seed}, begun ${started.toISOString()}\n`);
  const seedFolder = newFolder();
  const seed = seedLibrary(seedFolder);
  const left = [...chosen];
  const outcomes: Outcome[] = [];
  const lane = async (): Promise<void> => {
    for (let proof = left.shift(); proof !== undefined; proof = left.shift()) {
      outcomes.push(await prove(proof, { ...length, seedLibrary: () => seed }));
    }
  };
  await Promise.all(Array.from({ length: lanes }, lane));
  rmSync(seedFolder, { recursive: true, force: true });
  outcomes.sort((one, other) => orderOf(one) - orderOf(other));
  const told = `${started.toISOString().slice(0, 10)}, ${said}, seed ${values.seed}`;
  const lines = new Map(outcomes.map((outcome) => [outcome.name, linesOf(outcome, told)]));
  process.stdout.write(`\n${tableOf([...lines.values()].flat())}\n`);
  for (const { name, figures } of outcomes) {
    for (const { what, wrong } of figures) {
      for (const each of wrong.slice(0, 20)) process.stdout.write(`\nWRONG ${name}, ${what}: ${each}`);
    }
  }
  if (values.record) record(lines);
  const held = outcomes.filter((outcome) => isHeld(outcome, values.long)).length;
  process.stdout.write(`\n${held} passed, ${outcomes.length - held} failed\n`);
  return held === outcomes.length ? 0 : 1;
}

const newFolder = (): string => realpathSync(mkdtempSync(path.join(tmpdir(), 'rackside-trust-')));

const orderOf = ({ name }: Outcome): number => proofs.findIndex((proof) => proof.name === name);

type Length = { readonly long: boolean; readonly seed: number; readonly endMs: number };

async function prove(
  { name, run: work }: Proof,
  { long, seed, endMs, seedLibrary: seeded }: Length & { readonly seedLibrary: () => Promise<SeedLibrary> },
): Promise<Outcome> {
  const folder = newFolder();
  const since = performance.now();
  const tookS = () => Math.round((performance.now() - since) / 1000);
  const said = timeLeft(name, (line) => process.stdout.write(`${line}\n`));
  try {
    const figures = await work({
      long,
      random: randomOf(seed),
      folder,
      seedLibrary: seeded,
      progress: said,
      isOver: () => performance.now() > endMs,
    });
    process.stdout.write(`${name}: ended after ${tookS()} s\n`);
    return { name, figures, tookS: tookS(), notHere: null };
  } catch (error) {
    if (error instanceof NotHere) return { name, figures: [], tookS: tookS(), notHere: error.message };
    const wrong = [error instanceof Error ? (error.stack ?? error.message) : String(error)];
    return {
      name,
      figures: [{ what: 'the proof broke off', tried: 1, found: '', wrong }],
      tookS: tookS(),
      notHere: null,
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Puts the figures into the guide, in place of those that stand there of the same proofs. */
function record(lines: ReadonlyMap<string, string[]>): void {
  const text = readFileSync(guide, 'utf8');
  const [from, to] = [text.indexOf(begins) + begins.length, text.indexOf(ends)];
  const known = linesByProof(text.slice(from, to));
  const all = proofs.flatMap(({ name }) => lines.get(name) ?? known.get(name) ?? []);
  writeFileSync(guide, `${text.slice(0, from)}\n\n${tableOf(all)}\n\n${text.slice(to)}`);
}

process.exit(await run());
