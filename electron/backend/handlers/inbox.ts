import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import path from 'node:path';
import type { Choice } from '../../../engine/arrival/arrival.ts';
import type { PartOfChoice } from '../../contract/inbox.ts';
import { ProblemError } from '../../contract/reply.ts';
import { findFilms } from '../arrivals/findFilms.ts';
import { readInbox } from '../arrivals/readInbox.ts';
import { readBatch, takeFilms } from '../arrivals/takeFilms.ts';
import { mediaType } from '../files/mediaType.ts';
import {
  bytesOfInbox,
  choiceOf,
  countInbox,
  findArrival,
  readAgain,
  setChoice,
  setRemoved,
} from '../store/arrivals.ts';
import { inTransaction } from '../store/connection.ts';
import { assertOutsideLibrary } from '../store/folder.ts';
import { findFootage } from '../store/footage.ts';
import type { Handler } from './handler.ts';

export const getInbox: Handler<'inbox.get'> = (context) => {
  const { files, sessions } = readInbox(context);
  const more = countInbox(context.library().reading) - files.length;
  return {
    files: [...files],
    more,
    bytes: bytesOfInbox(context.library().reading),
    sessions: [...sessions],
    watch: context.watchedFolder(),
  };
};

export const countFiles: Handler<'inbox.count'> = (context) => ({ files: countInbox(context.library().reading) });

const mostNamed = 20;

export const takeIn: Handler<'inbox.take'> = async (context, { paths }) => {
  const { folder } = context.library();
  // The library's own copies are no new clips.
  for (const each of paths) assertOutsideLibrary(folder, path.resolve(each));
  const { films, others } = await findFilms(paths, { except: folder.root });
  const { taken, jobId } = takeFilms(context, films, 'inbox');
  return {
    taken,
    alreadyThere: films.length - taken,
    passedOver: others.length,
    passedOverNames: others.slice(0, mostNamed),
    jobId,
  };
};

/** What each part of a choice is kept as. */
const keptAs: Readonly<Record<PartOfChoice, readonly (keyof Choice)[]>> = {
  trainee: ['traineeId', 'newTrainee'],
  session: ['sessionId', 'date'],
  exercise: ['exercise'],
  view: ['view'],
  load: ['loadKg'],
};

export const chooseForFiles: Handler<'inbox.choose'> = (context, { arrivalIds, choice, forget }) => {
  const { writing } = context.library();
  // Of two ways to say one thing the newer counts.
  const replaced = Object.values(keptAs).filter((names) => names.some((name) => choice[name] !== undefined));
  const forgotten = new Set([...forget.map((part) => keptAs[part]), ...replaced].flat());
  inTransaction(writing, () => {
    for (const arrivalId of arrivalIds) {
      const kept = Object.entries(choiceOf(findArrival(writing, arrivalId))).filter(
        ([name]) => ![...forgotten].some((one) => one === name),
      );
      setChoice(writing, arrivalId, { ...Object.fromEntries(kept), ...choice });
    }
  });
  context.emit({ name: 'inboxChanged', data: {} });
  return {};
};

export const removeFiles: Handler<'inbox.remove'> = (context, { arrivalIds }) => {
  const { writing } = context.library();
  inTransaction(writing, () => {
    for (const arrivalId of arrivalIds) setRemoved(writing, findArrival(writing, arrivalId).id, true);
  });
  context.emit({ name: 'inboxChanged', data: {} });
  return {};
};

export const putFilesBack: Handler<'inbox.putBack'> = (context, { arrivalIds }) => {
  const { writing } = context.library();
  inTransaction(writing, () => {
    for (const arrivalId of arrivalIds) setRemoved(writing, arrivalId, false);
    for (const arrivalId of arrivalIds) findArrival(writing, arrivalId);
  });
  context.emit({ name: 'inboxChanged', data: {} });
  return {};
};

export const readFilesAgain: Handler<'inbox.readAgain'> = (context, { arrivalIds }) => {
  const { writing } = context.library();
  const batchId = randomUUID();
  inTransaction(writing, () => {
    for (const arrivalId of arrivalIds) {
      if (findArrival(writing, arrivalId).state !== 'read') readAgain(writing, arrivalId, batchId);
    }
  });
  const jobId = readBatch(context, batchId, arrivalIds.length);
  context.emit({ name: 'inboxChanged', data: {} });
  return { jobId };
};

export const findInboxPicture: Handler<'inbox.picture'> = (context, { arrivalId, what }) => {
  const { reading, folder } = context.library();
  const arrival = findArrival(reading, arrivalId);
  const footage = arrival.footage_id === null ? undefined : findFootage(reading, arrival.footage_id);
  const name = what === 'poster' ? footage?.poster_file : footage?.filmstrip_file;
  const file = name ? path.join(folder.pictures, name) : undefined;
  if (file === undefined || !existsSync(file)) {
    throw new ProblemError('not-found', 'pictureMissing', { what, clip: path.basename(arrival.path) });
  }
  return { path: file, type: mediaType(file) };
};
