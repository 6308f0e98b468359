import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import type { SessionSummary } from '../../contract/desk.ts';
import type { Reading } from '../store/connection.ts';
import type { LibraryFolder } from '../store/folder.ts';
import { mediaOfSession } from '../store/mediaOfSession.ts';
import { readReview } from '../store/readReview.ts';
import { listSessions, type SessionRow } from '../store/sessions.ts';
import { findTrainee, listTrainees, traineeOf } from '../store/trainees.ts';
import type { Handler } from './handler.ts';

export const getDesk: Handler<'desk.get'> = (context) => {
  const { reading, folder } = context.library();
  return {
    sessions: listSessions(reading).map((session) =>
      summarise({ reading, folder }, session, context.catalogue(session.rubric_version)),
    ),
    trainees: listTrainees(reading).map((row) => ({ ...traineeOf(row), names: row.names })),
  };
};

const mostPosters = 3;

type Place = { readonly reading: Reading; readonly folder: LibraryFolder };

function summarise({ reading, folder }: Place, session: SessionRow, catalogue: Catalogue): SessionSummary {
  const review = readReview(reading, session.id);
  const grade = gradeSession(review, catalogue);
  const coverages = grade.entries.map((entry) => entry.coverage);
  return {
    id: session.id,
    traineeId: session.trainee_id,
    traineeName: findTrainee(reading, session.trainee_id).name,
    title: session.title,
    secondLookOf: session.second_look_of,
    readOnly: session.read_only === 1,
    date: session.date,
    exercises: review.entries.map((entry) => entry.exercise),
    clips: review.entries.reduce((sum, entry) => sum + entry.clips.length, 0),
    posterClipIds: mediaOfSession(reading, folder, session.id)
      .filter((media) => media.hasPoster)
      .slice(0, mostPosters)
      .map((media) => media.clipId),
    flags: review.entries.reduce((sum, entry) => sum + entry.flags.length, 0),
    mark: grade.state.kind === 'none' ? '' : grade.state.mark,
    provisional: grade.state.kind === 'provisional',
    byHand: [grade, ...grade.entries].some(({ override }) => override !== null),
    coverage: coverages.length === 0 ? 0 : coverages.reduce((sum, each) => sum + each, 0) / coverages.length,
  };
}
