import { openBackend } from '../../../electron/backend/backend.ts';
import type { Job } from '../../../electron/contract/jobs.ts';
import type { Problem } from '../../../electron/contract/reply.ts';
import { rootFolder } from '../../../electron/launch/folders.ts';
import { sayProblem } from '../../../engine/wording/sayProblem.ts';
import { ask, jobsAtRest } from '../harness/ask.ts';
import { leftoversIn } from '../harness/leftovers.ts';
import { brokenHandover } from '../kills/longWork.ts';
import type { StrainOrder } from './strainOrder.ts';

/** What came of working while the disk refuses. */
export type Strained = {
  /** Notes of the flags that were acknowledged. */
  readonly flags: readonly string[];
  readonly imported: boolean;
  readonly handedOver: boolean;
  readonly refused: number;
  /** Refusals that were not the disk's, or no sentence. */
  readonly wrong: readonly string[];
};

const mostActs = 25;
/** A job whose end finds no room is begun anew when the library is next opened; until then it is not waited for. */
const mostMs = 4000;

/** Works in a library whose disk may refuse at any time; what is refused is part of it. */
export async function workUnderStrain({
  library,
  out,
  sessionId,
  clipId,
  emptySessionId,
  emptyEntryId,
  film,
}: StrainOrder): Promise<Strained> {
  const backend = openBackend({ libraryFolder: library, appFolder: rootFolder });
  const flags: string[] = [];
  const wrong: string[] = [];
  let refused = 0;
  const isRefusal = (what: string, { code, message }: Problem): void => {
    refused += 1;
    const sentence = sayProblem(message, 'en');
    if (code !== 'disk' || !/\.$/.test(sentence)) wrong.push(`${what}: ${code}, ${sentence}`);
  };
  for (let act = 0; act < mostActs && refused < 4; act += 1) {
    const note = `Act ${act}`;
    const flag = { clipId, criterion: 'depth', severity: 'adjust', reps: 'set', frame: act, note } as const;
    const reply = await backend.ask('flags.add', flag);
    if (reply.ok) flags.push(note);
    else isRefusal('an act', reply.problem);
  }
  const ended = async (
    what: string,
    asked: Promise<{ ok: true; value: { jobIds: string[] } } | { ok: false; problem: Problem }>,
  ) => {
    const reply = await asked;
    if (!reply.ok) {
      isRefusal(what, reply.problem);
      return false;
    }
    const [jobId] = reply.value.jobIds;
    const job = (await jobsAtRest(backend, mostMs)).find(({ id }) => id === jobId);
    if (job?.state === 'failed') isFailure(what, job);
    return job?.state === 'done';
  };
  const isFailure = (what: string, { message }: Job): void => {
    refused += 1;
    const sentence = message === null ? '' : sayProblem(message, 'en');
    if (message?.id === 'unforeseen' || !/\.$/.test(sentence)) wrong.push(`${what} failed: ${sentence}`);
  };
  const state = await backend.ask('library.state', {});
  const isFull = refused > 0 && flags.length % 5 > 0;
  // Where acts find no room already, longer work is tried in some runs only: it waits for its end.
  if (!state.ok || state.value.kind !== 'open' || isFull) {
    await backend.close();
    return { flags, imported: false, handedOver: false, refused, wrong };
  }
  const clip = { sessionId: emptySessionId, entryId: emptyEntryId, view: 'side', paths: [film] } as const;
  const imported = await ended('an import', backend.ask('clips.import', { ...clip, paths: [...clip.paths] }));
  const options = { clips: false, originals: true };
  const handedOver = await ended(
    'a handover',
    backend.ask('handover.start', { sessionIds: [sessionId], folder: out, options }),
  );
  await backend.close();
  return { flags, imported, handedOver, refused, wrong };
}

/** What was acknowledged and is not there now that the disk has room again; a sentence each. */
export async function lostAfter(
  { library, out, sessionId, emptySessionId }: StrainOrder,
  before: Strained,
): Promise<string[]> {
  const backend = openBackend({ libraryFolder: library, appFolder: rootFolder });
  const lost: string[] = [];
  try {
    const { review } = await ask(backend, 'review.get', { sessionId });
    const there = new Set(review.entries.flatMap((entry) => entry.flags.map(({ note }) => note)));
    lost.push(...before.flags.filter((note) => !there.has(note)).map((note) => `“${note}” is lost`));
    const tooMany = [...there].filter((note) => note.startsWith('Act ') && !before.flags.includes(note));
    // What was refused must not be there either: the person did it again, or let it be.
    lost.push(...tooMany.map((note) => `“${note}” was refused and is there`));
    await jobsAtRest(backend);
    const { media } = await ask(backend, 'review.get', { sessionId: emptySessionId });
    if (before.imported && !media.some(({ ready }) => ready)) lost.push('the clip is lost');
    const { deliveries } = await ask(backend, 'handover.list', { sessionId });
    if (before.handedOver && deliveries.length === 0) lost.push('the handover is not recorded');
    lost.push(...deliveries.flatMap(({ path: place }) => brokenHandover(place)));
    lost.push(...(await ask(backend, 'library.verify', {})).findings);
  } catch (error) {
    lost.push(String(error));
  } finally {
    await backend.close();
  }
  return [...lost, ...[...leftoversIn(library), ...leftoversIn(out)].map((name) => `left over: ${name}`)];
}
