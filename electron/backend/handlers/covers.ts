import { randomUUID } from 'node:crypto';
import {
  type Box,
  type ClipCover,
  meetsPicture,
  mostCoverPlaces,
  mostCovers,
  withoutPlace,
  withPlace,
} from '../../../engine/covers/cover.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { type ClipHome, findClip } from '../store/clips.ts';
import type { Reading } from '../store/connection.ts';
import { coverColumns, coverOf, findCover, listCovers, nextCoverOrdinal } from '../store/covers.ts';
import { findFootage } from '../store/footage.ts';
import { readFrameTable } from '../store/frameTables.ts';
import { uprightOf } from '../store/framing.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';
import { exactMoment, footageMoment } from './judging.ts';

export const addCover: Handler<'covers.add'> = (context, { clipId, cover: asked, look }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  assertRoom(reading, clip, asked.kind);
  const whole = { firstFrame: 0, lastFrame: lastFrameOf(reading, clip), look };
  if (asked.kind === 'box') assertInPicture(reading, clip, asked.place);
  const cover: ClipCover =
    asked.kind === 'box' ? { kind: 'box', ...whole, places: [asked.place] } : { kind: 'head', ...whole };
  const id = randomUUID();
  return actOnSession(context, clip.session_id, (changes) => {
    const ordinal = nextCoverOrdinal(changes.reading, clipId);
    changes.insert('cover', { id, clip_id: clipId, ordinal, ...coverColumns(cover) });
    return { name: { id: 'coverAdded', values: { clip: clip.name } }, value: { coverId: id } };
  });
};

export const placeCover: Handler<'covers.place'> = (context, { coverId, frame, box }) => {
  const { reading } = context.library();
  const { clip, cover } = boxCover(reading, coverId);
  assertInPicture(reading, clip, { frame, box });
  if (frame < cover.firstFrame || frame > cover.lastFrame) {
    throw new ProblemError('conflict', 'coverAbsent', { frame });
  }
  const places = withPlace(cover.places, { frame, box });
  if (places.length > mostCoverPlaces) {
    throw new ProblemError('conflict', 'coverPlacesFull', { most: mostCoverPlaces });
  }
  return change(context, { coverId, clip, cover: { ...cover, places } }, 'coverMoved');
};

export const updateCover: Handler<'covers.update'> = (context, { coverId, change: asked }) => {
  const { reading } = context.library();
  const { clip, cover: before } = existing(reading, coverId);
  const cover: ClipCover = {
    ...before,
    look: asked.look ?? before.look,
    firstFrame: asked.firstFrame ?? before.firstFrame,
    lastFrame: asked.lastFrame ?? before.lastFrame,
  };
  footageMoment(reading, clip, cover.firstFrame);
  footageMoment(reading, clip, cover.lastFrame);
  if (cover.lastFrame < cover.firstFrame) {
    throw new ProblemError('conflict', 'coverEndsEarly');
  }
  return change(context, { coverId, clip, cover }, 'coverChanged');
};

export const removeCoverPlace: Handler<'covers.removePlace'> = (context, { coverId, frame }) => {
  const { clip, cover } = boxCover(context.library().reading, coverId);
  const places = withoutPlace(cover.places, frame);
  if (places.length === cover.places.length) {
    throw new ProblemError('not-found', 'noCoverPlace', { frame });
  }
  if (places.length === 0) {
    throw new ProblemError('conflict', 'onlyCoverPlace');
  }
  return change(context, { coverId, clip, cover: { ...cover, places } }, 'coverPlaceRemoved');
};

export const removeCover: Handler<'covers.remove'> = (context, { coverId }) => {
  const { clip } = existing(context.library().reading, coverId);
  return actOnSession(context, clip.session_id, (changes) => {
    changes.remove('cover', { id: coverId });
    return { name: { id: 'coverRemoved', values: { clip: clip.name } }, value: {} };
  });
};

type Changed = { readonly coverId: string; readonly clip: ClipHome; readonly cover: ClipCover };

function change(
  context: Context,
  { coverId, clip, cover }: Changed,
  id: 'coverMoved' | 'coverChanged' | 'coverPlaceRemoved',
): Record<string, never> {
  return actOnSession(context, clip.session_id, (changes) => {
    changes.update('cover', { id: coverId }, coverColumns(cover));
    return { name: { id, values: { clip: clip.name } }, value: {} };
  });
}

function existing(reading: Reading, coverId: string): { readonly clip: ClipHome; readonly cover: ClipCover } {
  const row = findCover(reading, coverId);
  if (row) return { clip: findClip(reading, row.clip_id), cover: coverOf(row) };
  throw new ProblemError('not-found', 'coverGone');
}

function boxCover(reading: Reading, coverId: string) {
  const { clip, cover } = existing(reading, coverId);
  if (cover.kind === 'box') return { clip, cover };
  throw new ProblemError('conflict', 'coverFollowsHead');
}

function assertRoom(reading: Reading, clip: ClipHome, kind: ClipCover['kind']): void {
  const covers = listCovers(reading, clip.id);
  if (covers.length >= mostCovers) {
    throw new ProblemError('conflict', 'coversFull', { clip: clip.name, most: mostCovers });
  }
  if (kind !== 'head' || covers.every((cover) => cover.kind !== 'head')) return;
  throw new ProblemError('conflict', 'headCovered', { clip: clip.name });
}

function lastFrameOf(reading: Reading, clip: ClipHome): number {
  const table = clip.footage_id === null ? undefined : readFrameTable(reading, clip.footage_id, 'original');
  if (table) return table.ticks.length - 1;
  throw new ProblemError('conflict', 'nothingToCover', { clip: clip.name });
}

function assertInPicture(
  reading: Reading,
  clip: ClipHome,
  { frame, box }: { readonly frame: number; readonly box: Box },
): void {
  exactMoment(reading, clip, frame);
  const footage = clip.footage_id === null ? undefined : findFootage(reading, clip.footage_id);
  if (footage && meetsPicture(box, uprightOf(footage, clip))) return;
  throw new ProblemError('bad-request', 'coverOutside');
}
