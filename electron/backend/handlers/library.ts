import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { nameTranslations } from '../../../engine/exercises/searchExercises.ts';
import { step } from '../../../engine/wording/sayJob.ts';
import { type DamagedList, damagedLists } from '../../contract/library.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { writeWhole } from '../files/writeWhole.ts';
import { problemReport } from '../report/problemReport.ts';
import { verifyLibrary } from '../report/verifyLibrary.ts';
import { assertOutsideLibrary } from '../store/folder.ts';
import { type DigestedTable, listDiffering } from '../store/rowDigests.ts';
import type { Handler } from './handler.ts';

export const getLibraryState: Handler<'library.state'> = (context) => context.libraryState();

export const createNewLibrary: Handler<'library.create'> = (context, { contents, voice, coach }) => {
  context.createLibrary({ voice, coach: coach.trim().slice(0, 200) });
  context.emit({ name: 'libraryChanged', data: {} });
  if (contents === 'empty') return { jobId: null };
  return { jobId: addDemoJob(context) };
};

const addDemoJob = (context: Context): string =>
  context.jobs.add({
    kind: 'demo',
    title: step('demoSession'),
    sessionId: null,
    task: { do: 'demo', sessionId: randomUUID(), earlierId: randomUUID() },
  });

/** The demo session beside what the library holds already. */
export const addDemo: Handler<'library.addDemo'> = (context) => {
  context.library();
  return { jobId: addDemoJob(context) };
};

export const verifyWholeLibrary: Handler<'library.verify'> = async (context) => {
  const { findings, clips, sessions } = await verifyLibrary(context);
  return { sound: findings.length === 0, findings: [...findings], clips, sessions };
};

const tablesOf: Readonly<Record<DamagedList, readonly DigestedTable[]>> = {
  trainees: ['trainee'],
  sessions: ['session', 'entry', 'clip'],
  inbox: ['arrival'],
};

export const listDamage: Handler<'library.damage'> = (context) => {
  const { reading } = context.library();
  return damagedLists.filter((list) => listDiffering(reading, tablesOf[list]).length > 0);
};

export const writeProblemReport: Handler<'report.write'> = async (context, { path: asked }) => {
  const { folder } = context.library();
  const target = path.resolve(asked);
  assertOutsideLibrary(folder, target);
  await writeWhole(target, new TextEncoder().encode(await problemReport(context)));
  return { path: target };
};

export const getCatalogue: Handler<'catalogue.get'> = (context, { version, language = 'en' }) => {
  const versions = context.rubricVersions();
  const asked = version ?? versions.at(-1);
  if (asked === undefined || !versions.includes(asked)) {
    throw new ProblemError('not-found', 'noRubricVersion', { version: asked ?? 0 });
  }
  const catalogue = translated(context.catalogue(asked), language);
  const { rubric, exercises, cautions } = catalogue;
  return {
    rubric,
    exercises: [...exercises],
    cautions: [...cautions],
    translations: [...nameTranslations(catalogue)],
    rubricVersions: [...versions],
  };
};
