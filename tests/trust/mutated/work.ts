import { openBackend } from '../../../electron/backend/backend.ts';
import { problemOf } from '../../../electron/backend/context/problems.ts';
import { probeClip } from '../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../electron/backend/media/tools/mediaTools.ts';
import type { Problem } from '../../../electron/contract/reply.ts';
import { rootFolder } from '../../../electron/launch/folders.ts';
import { sayProblem } from '../../../engine/wording/sayProblem.ts';
import { ask, jobsAtRest } from '../harness/ask.ts';
import type { Answer, Input } from './inputWork.ts';

/** Gives inputs to the app and tells what it made of them. */
const [libraryFolder = ''] = process.argv.slice(2);
const backend = openBackend({ libraryFolder, appFolder: rootFolder });
const tools = await findMediaTools();

async function given({ kind, file }: Input): Promise<Problem | null> {
  if (kind === 'film') {
    try {
      await probeClip(tools, file);
      return null;
    } catch (error) {
      return problemOf(error, 'probing');
    }
  }
  if (kind === 'filmIntoSession') {
    const [trainee] = await ask(backend, 'desk.trainees', {});
    const { sessionId } = await ask(backend, 'sessions.add', { traineeId: trainee?.id ?? '', date: '2026-03-04' });
    const reply = await backend.ask('clips.import', { sessionId, exercise: 'back-squat', paths: [file] });
    return reply.ok ? jobProblem(reply.value.jobIds) : reply.problem;
  }
  const reply = await backend.ask('reviews.import', { path: file });
  return reply.ok ? jobProblem([reply.value.jobId]) : reply.problem;
}

/** Why a job failed, as a problem; null when it was done. Its code is not kept: only what is unforeseen counts as broken. */
async function jobProblem(jobIds: readonly string[]): Promise<Problem | null> {
  const failed = (await jobsAtRest(backend)).find(({ id, state }) => jobIds.includes(id) && state === 'failed');
  if (failed?.message == null) return null;
  return { code: failed.message.id === 'unforeseen' ? 'internal' : 'bad-media', message: failed.message };
}

async function answerTo(input: Input): Promise<Answer> {
  const rssMb = () => Math.round(process.memoryUsage.rss() / 1e6);
  try {
    const problem = await given(input);
    if (problem === null) return { id: input.id, result: 'taken', said: '', rssMb: rssMb() };
    const said = sayProblem(problem.message, 'en');
    const isSentence = problem.code !== 'internal' && /\p{L}.*\.$/su.test(said);
    return {
      id: input.id,
      result: isSentence ? 'refused' : 'broken',
      said: `${problem.code}: ${said}`,
      rssMb: rssMb(),
    };
  } catch (error) {
    const said = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { id: input.id, result: 'broken', said, rssMb: rssMb() };
  }
}

process.on('message', (input) => {
  void answerTo(input as Input).then((answer) => process.send?.(answer));
});
process.on('disconnect', () => process.exit(0));
process.send?.('ready');
