import { ProblemError } from '../../contract/reply.ts';
import { findClip } from '../store/clips.ts';
import { writePlace } from '../store/places.ts';
import type { Handler } from './handler.ts';

export const setPlace: Handler<'place.set'> = (context, { sessionId, clipId, frame }) => {
  const { reading, writing } = context.library();
  if (findClip(reading, clipId).session_id !== sessionId) {
    throw new ProblemError('conflict', 'This clip belongs to another session, so the place was not remembered.');
  }
  writePlace(writing, sessionId, { clipId, frame });
  return {};
};
