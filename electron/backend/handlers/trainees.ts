import { randomUUID } from 'node:crypto';
import { cautionsDue } from '../../../engine/cautions/cautionsDue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { isSameName } from '../../../engine/names/folding.ts';
import { compareSessions } from '../../../engine/progress/faultChanges.ts';
import { trendOf } from '../../../engine/progress/trend.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import type { CheckedParams, Result } from '../../contract/requests.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { clipToMeasure } from '../measure/clipToMeasure.ts';
import { fastestMpsOfClip } from '../measure/measurementOfClip.ts';
import { type ActName, deriveAnew, perform } from '../store/acts.ts';
import { listLoadedClips } from '../store/clipSpeeds.ts';
import { equipmentColumn } from '../store/columns.ts';
import { readLibraryFacts, renameOwner } from '../store/library.ts';
import { readReview } from '../store/readReview.ts';
import { listSessionIdsOf, listSessionsOf } from '../store/sessions.ts';
import { forgetContents } from '../store/summaries.ts';
import { findTrainee, type TraineeRow, traineeColumns } from '../store/trainees.ts';
import type { Handler } from './handler.ts';

export const addTrainee: Handler<'trainees.add'> = (context, trainee) => {
  const traineeId = addNewTrainee(context, trainee);
  context.emit({ name: 'traineesChanged', data: {} });
  return { traineeId };
};

/** Adds a trainee; whoever asks tells of it after the commit. */
export function addNewTrainee(context: Context, { names, notes, ...trainee }: CheckedParams<'trainees.add'>): string {
  const id = randomUUID();
  const library = context.library();
  const about = { sessionId: null, actorName: actorName(library), kind: 'once' } as const;
  perform(library.writing, about, (changes) => {
    changes.insert('trainee', { id, ...traineeColumns(trainee), names, notes, created_at: new Date().toISOString() });
    return { name: { id: 'traineeAdded', values: { trainee: trainee.name } }, value: undefined };
  });
  return id;
}

export const updateTrainee: Handler<'trainees.update'> = (context, { traineeId, ...change }) => {
  const library = context.library();
  const former = findTrainee(library.reading, traineeId);
  const { name, goal, experience, units, minor, equipment, notes, archived } = change;
  const sessionIds = listSessionIdsOf(library.reading, traineeId);
  const { voice, coach } = readLibraryFacts(library.reading);
  const isOwner = voice === 'self' && isSameName(former.name, coach);
  perform(library.writing, { sessionId: null, actorName: actorName(library), kind: 'once' }, (changes) => {
    changes.update(
      'trainee',
      { id: traineeId },
      {
        ...(name !== undefined && { name }),
        ...(goal !== undefined && { goal }),
        ...(experience !== undefined && { experience }),
        ...(units !== undefined && { units }),
        ...(minor !== undefined && { minor: minor ? 1 : 0 }),
        ...(equipment !== undefined && equipmentColumn(equipment)),
        ...(notes !== undefined && { notes }),
        ...(archived !== undefined && archivedColumn(former, archived)),
      },
    );
    // Whoever reviews their own sets is known to the library by the same name.
    if (isOwner && name !== undefined) renameOwner(library.writing, name);
    for (const sessionId of sessionIds) deriveAnew(library.writing, sessionId);
    return { name: updateName(former.name, archived), value: undefined };
  });
  context.emit({ name: 'traineesChanged', data: {} });
  if (isOwner && name !== undefined) context.emit({ name: 'libraryChanged', data: {} });
  for (const sessionId of sessionIds) tellChanged(context, sessionId);
  return {};
};

const archivedColumn = ({ archived_at }: TraineeRow, archived: boolean) => ({
  archived_at: archived ? (archived_at ?? new Date().toISOString()) : null,
});

function updateName(trainee: string, archived: boolean | undefined): ActName {
  const id = archived === undefined ? 'traineeChanged' : archived ? 'traineeArchived' : 'traineeBack';
  return { id, values: { trainee } };
}

export const setNames: Handler<'trainees.names'> = (context, { traineeId, names }) => {
  const library = context.library();
  const { name } = findTrainee(library.reading, traineeId);
  perform(library.writing, { sessionId: null, actorName: actorName(library), kind: 'once' }, (changes) => {
    changes.update('trainee', { id: traineeId }, { names });
    forgetContents(library.writing, traineeId);
    return { name: { id: 'traineeNamed', values: { trainee: name } }, value: undefined };
  });
  context.emit({ name: 'traineesChanged', data: {} });
  for (const sessionId of listSessionIdsOf(library.reading, traineeId)) tellChanged(context, sessionId);
  return {};
};

/** A trainee's sessions over time, all read by the newest version of the rubric, so that they can be laid side by side. */
export const getTraineeHistory: Handler<'trainees.history'> = (context, { traineeId }) => {
  const { reading } = context.library();
  findTrainee(reading, traineeId);
  const catalogue = context.catalogue(context.rubricVersions().at(-1));
  const sessions = listSessionsOf(reading, traineeId);
  const reviews = sessions.map((session) => {
    const from = context.catalogue(session.rubric_version);
    return { session, from, own: readReview(reading, session.id) };
  });
  const under = reviews.map(({ own, from }) => reviewUnder(own, { from, to: catalogue }));
  const points = reviews.map(({ session, own, from }, place) => {
    const { state } = gradeSession(own, from);
    const review = under[place] ?? own;
    return {
      sessionId: session.id,
      date: session.date,
      title: session.title,
      grade: state.kind === 'none' ? null : { mark: state.mark, score: state.score },
      criteria: (trendOf([review], catalogue)[0]?.criteria ?? []).map((one) => ({ ...one })),
      changes: compareSessions(review, under.slice(0, place), catalogue),
    };
  });
  const latest = under.at(-1);
  return {
    points,
    // Those that go with every letter say nothing of this trainee.
    cautions: latest === undefined ? [] : cautionsDue(latest, catalogue).filter(({ applies }) => applies !== 'always'),
    rubricVersion: catalogue.rubric.version,
  };
};

/** How fast a trainee moved which load, set by set; other requests are answered between two clips that must be measured. */
export const getTraineeSpeeds: Handler<'trainees.speeds'> = async (context, { traineeId }) => {
  const library = context.library();
  findTrainee(library.reading, traineeId);
  const sets: Result<'trainees.speeds'> = [];
  for (const set of listLoadedClips(library.reading, traineeId)) {
    const fastestMps = fastestMpsOfClip(library, clipToMeasure(context, library.reading, set.clipId));
    if (fastestMps !== null) sets.push({ ...set, fastestMps });
    await new Promise(setImmediate);
  }
  return sets;
};
