import { type ChildProcess, execFileSync, fork } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openBackend } from '../../electron/backend/backend.ts';
import { findMediaTools } from '../../electron/backend/media/tools/mediaTools.ts';
import { rootFolder } from '../../electron/launch/folders.ts';
import { networkSockets } from '../e2e/harness/sockets.ts';
import { ask, jobsAtRest } from './harness/ask.ts';
import type { Order, Proof } from './harness/proof.ts';
import type { Random } from './harness/random.ts';
import type { SeedLibrary } from './harness/seedLibrary.ts';
import type { Answer, Input } from './mutated/inputWork.ts';
import { mutatedFilm, mutatedJson, mutatedZip, strangeValues } from './mutated/mutate.ts';

const mostMb = 2000;
/** Bringing a film in makes pictures and a playable copy; a busy machine takes its time over them. */
const mostSeconds = { review: 60, handover: 60, film: 60, filmIntoSession: 300 } as const satisfies Record<
  Input['kind'],
  number
>;
/** After so many the library begins anew, and what lies around it is looked at. */
const batch = 250;

type Corpus = {
  readonly reviews: readonly string[];
  readonly zips: readonly Buffer[];
  readonly films: readonly { readonly ending: string; readonly bytes: Buffer }[];
};

/** Files that came from elsewhere: whatever stands in them, they are taken in, or refused with a sentence. */
export const mutatedInputs: Proof = {
  name: 'mutated inputs',
  run: async (order) => {
    const most = order.long ? 10_000 : 200;
    const seed = await order.seedLibrary();
    const corpus = await corpusOf(order, seed);
    const strange = strangeValues(order.random.below(2 ** 31));
    const inputs = path.join(order.folder, 'inputs');
    const library = path.join(order.folder, 'reader');
    mkdirSync(inputs);
    const tally: Record<Input['kind'], Record<Answer['result'], number>> = {
      review: { taken: 0, refused: 0, broken: 0 },
      handover: { taken: 0, refused: 0, broken: 0 },
      film: { taken: 0, refused: 0, broken: 0 },
      filmIntoSession: { taken: 0, refused: 0, broken: 0 },
    };
    const wrong: Record<Input['kind'], string[]> = { review: [], handover: [], film: [], filmIntoSession: [] };
    let [tried, mostSaidMb, slowestS] = [0, 0, 0];
    while (tried < most && !order.isOver()) {
      cpSync(seed.folder, library, { recursive: true });
      const before = treeAround(order.folder);
      let reader = await Reader.start(library, order.folder);
      for (let each = 0; each < batch && tried < most && !order.isOver(); each += 1) {
        const input = nextInput(tried, inputs, corpus, strange, order.random);
        const since = performance.now();
        const answer = await reader.give(input);
        if (input.kind !== 'filmIntoSession') slowestS = Math.max(slowestS, (performance.now() - since) / 1000);
        mostSaidMb = Math.max(mostSaidMb, answer.rssMb);
        tally[input.kind][answer.result] += 1;
        if (answer.result === 'broken' || answer.rssMb > mostMb) {
          const kept = path.join(tmpdir(), `rackside-trust-input-${tried}${path.extname(input.file)}`);
          cpSync(input.file, kept);
          wrong[input.kind].push(`${kept}: ${answer.rssMb} MB, ${answer.said}`);
          if (reader.isGone) reader = await Reader.start(library, order.folder);
        }
        rmSync(input.file);
        tried += 1;
        order.progress(tried, most);
      }
      const sockets = await reader.sockets();
      await reader.end();
      wrong.review.push(...sockets.map((socket) => `a connection: ${socket}`));
      const after = treeAround(order.folder);
      wrong.review.push(
        ...after.filter((name) => !before.includes(name)).map((name) => `outside of the library: ${name}`),
      );
      rmSync(library, { recursive: true });
    }
    const limits = `slowest to be read ${slowestS.toFixed(1)} s of 60 s, most memory ${mostSaidMb} MB of ${mostMb} MB`;
    const figure = (kind: Input['kind'], what: string, more = '') => ({
      what,
      tried: tally[kind].taken + tally[kind].refused + tally[kind].broken,
      found: `${tally[kind].refused} refused in a sentence, ${tally[kind].taken} taken in${more}`,
      wrong: wrong[kind],
    });
    return [
      figure(
        'review',
        'a review file (sessions, plans, clips, flags) changed in its structure or bytes',
        `; all inputs: ${limits}, no file outside, no connection`,
      ),
      figure('handover', 'a handover’s zip'),
      figure('film', 'a film (mp4, mov, mkv, webm, ts), read'),
      figure('filmIntoSession', 'a film, brought into a session whole'),
    ];
  },
};

function nextInput(id: number, folder: string, corpus: Corpus, strange: readonly unknown[], random: Random): Input {
  const kind = id % 100 === 99 ? 'filmIntoSession' : id % 10 === 9 ? 'film' : id % 10 >= 7 ? 'handover' : 'review';
  const at = (name: string): string => path.join(folder, name);
  if (kind === 'review') {
    writeFileSync(at(`${id}.json`), mutatedJson(random.oneOf(corpus.reviews), strange, random), 'latin1');
    return { id, kind, file: at(`${id}.json`) };
  }
  if (kind === 'handover') {
    writeFileSync(at(`${id}.zip`), mutatedZip(random.oneOf(corpus.zips), random));
    return { id, kind, file: at(`${id}.zip`) };
  }
  const film = random.oneOf(corpus.films);
  writeFileSync(at(id + film.ending), mutatedFilm(film.bytes, random));
  return { id, kind, file: at(id + film.ending) };
}

/** Names of what lies in the proof's folder, where the reader has its home and its temporary files; the library and the inputs aside. */
function treeAround(folder: string): string[] {
  const around = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (name) => !/^(reader|inputs)\//.test(name),
  );
  return [...around, ...readdirSync('/etc')];
}

/** Files as the app writes them, and films of every kind that it reads. */
async function corpusOf({ folder }: Order, seed: SeedLibrary): Promise<Corpus> {
  const library = path.join(folder, 'corpus');
  const out = path.join(folder, 'out');
  cpSync(seed.folder, library, { recursive: true });
  mkdirSync(out);
  const backend = openBackend({ libraryFolder: library, appFolder: rootFolder });
  for (const zip of [true, false]) {
    const options = { clips: false, originals: true, zip };
    await ask(backend, 'handover.start', { sessionIds: [seed.sessionId], folder: out, options });
    await jobsAtRest(backend);
  }
  await backend.close();
  const kept = readdirSync(path.join(library, 'handovers')).map((name) => path.join(library, 'handovers', name));
  const written = readdirSync(out).map((name) => path.join(out, name));
  const review = written.map((each) => path.join(each, 'review.json')).find((file) => existsSync(file));
  const reviews = [
    review ?? '',
    ...['example-session.json', 'demo/session.json'].map((name) => path.join(rootFolder, 'seeds', name)),
  ];
  const { ffmpeg } = await findMediaTools();
  const films = ['.mp4', '.mov', '.mkv', '.webm', '.ts'].map((ending) => {
    const file = path.join(folder, `corpus-film${ending}`);
    const codec = ending === '.webm' ? ['-c:v', 'libvpx', '-b:v', '200k', '-t', '0.5'] : ['-c', 'copy'];
    execFileSync(ffmpeg.path, ['-v', 'error', '-i', seed.film, ...codec, file]);
    return { ending, bytes: readFileSync(file) };
  });
  return {
    reviews: reviews.map((file) => readFileSync(file, 'utf8')),
    zips: [...kept, ...written].filter((name) => name.endsWith('.zip')).map((file) => readFileSync(file)),
    films,
  };
}

/** The process that reads, watched from outside. */
class Reader {
  readonly #child: ChildProcess;
  isGone = false;

  private constructor(child: ChildProcess) {
    this.#child = child;
    child.on('exit', () => {
      this.isGone = true;
    });
  }

  /** Begins a reader; on a machine so busy that the media tools don't answer in time, once more. */
  static async start(library: string, home: string): Promise<Reader> {
    for (let attempt = 0; attempt < 4; attempt += 1) {
      const reader = await Reader.begin(library, home).catch(() => null);
      if (reader !== null) return reader;
    }
    throw new Error('The reader did not start.');
  }

  private static async begin(library: string, home: string): Promise<Reader> {
    const script = path.join(import.meta.dirname, 'mutated/work.ts');
    const env = { ...process.env, HOME: home, TMPDIR: home };
    const child = fork(script, [library], { stdio: 'ignore', execArgv: ['--max-old-space-size=1500'], env });
    const reader = new Reader(child);
    await new Promise<void>((resolve, reject) => {
      child.once('message', () => resolve());
      child.once('exit', (code, signal) => reject(new Error(`The reader did not start (${signal ?? code}).`)));
    });
    return reader;
  }

  give(input: Input): Promise<Answer> {
    return new Promise((resolve) => {
      const settle = (answer: Answer): void => {
        clearTimeout(timer);
        this.#child.off('message', heard);
        this.#child.off('exit', died);
        resolve(answer);
      };
      const broken = (said: string): Answer => ({ id: input.id, result: 'broken', said, rssMb: 0 });
      const heard = (answer: unknown): void => settle(answer as Answer);
      const died = (code: number | null, signal: string | null): void => settle(broken(`crashed (${signal ?? code})`));
      const timer = setTimeout(() => {
        this.isGone = true;
        this.#child.kill('SIGKILL');
        settle(broken(`hung: no answer in ${mostSeconds[input.kind]} s`));
      }, mostSeconds[input.kind] * 1000);
      this.#child.on('message', heard);
      this.#child.on('exit', died);
      this.#child.send(input, () => undefined);
    });
  }

  /** The network sockets that it holds, with those of its children. */
  async sockets(): Promise<readonly string[]> {
    return this.isGone || this.#child.pid === undefined ? [] : networkSockets(this.#child.pid, 0);
  }

  end(): Promise<void> {
    return new Promise((resolve) => {
      if (this.isGone) return resolve();
      this.#child.once('exit', () => resolve());
      this.#child.disconnect();
    });
  }
}
