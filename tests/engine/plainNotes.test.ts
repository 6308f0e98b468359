import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareReviews } from '../../engine/agreement/compareReviews.ts';
import { annotationPage } from '../../engine/annotation/annotationPage.ts';
import { cautionsDue } from '../../engine/cautions/cautionsDue.ts';
import { gradeSession } from '../../engine/grading/gradeSession.ts';
import { planLetter } from '../../engine/letter/planLetter.ts';
import { sheetSubRip, sheetWebVtt } from '../../engine/notes/noteFiles.ts';
import { compareSessions } from '../../engine/progress/faultChanges.ts';
import { parseReview } from '../../engine/review/parseReview.ts';
import type { Flag, Review } from '../../engine/review/review.ts';
import { sheetCsv } from '../../engine/sheet/csv.ts';
import { sheetData } from '../../engine/sheet/sheetJson.ts';
import { writeSheet } from '../../engine/sheet/writeSheet.ts';
import { catalogue, draft, sessionOf, sessions } from './letter/sample.ts';

const words = 'as last week';

/** Two criteria that an exercise is judged by. */
const criteriaOf = (exercise: string): readonly string[] =>
  catalogue.exercises
    .find(({ id }) => id === exercise)
    ?.criteria.slice(0, 2)
    .map(({ id }) => id) ?? [];

/** The review with a plain note on the first rep, or on the set, of two criteria of each clip. */
const withNotes = (review: Review): Review => ({
  ...review,
  entries: review.entries.map((entry) => ({
    ...entry,
    flags: [
      ...entry.flags,
      ...entry.clips.flatMap((clip) =>
        criteriaOf(entry.exercise).map(
          (criterion): Flag => ({
            id: `note-${entry.id}-${clip.id}-${criterion}`,
            clip: clip.id,
            criterion,
            fault: null,
            severity: null,
            reps: clip.reps[0] === undefined ? 'set' : [clip.reps[0].index],
            at: { seconds: 1 },
            note: words,
            cue: '',
          }),
        ),
      ),
    ],
  })),
});

const runs = { numRuns: 20 };
const grade = (review: Review) => gradeSession(review, catalogue);

describe('plain notes, wherever they stand', () => {
  it('change no grade, no letter, no caution and no comparison', () => {
    fc.assert(
      fc.property(sessions, sessions, (review, before) => {
        const noted = withNotes(review);
        expect(grade(noted)).toEqual(grade(review));
        const film = ({ film: _, ...plan }: ReturnType<typeof planLetter>) => plan;
        const letter = (one: Review, past: Review) => film(planLetter(one, grade(one), catalogue, [past]));
        expect(letter(noted, withNotes(before))).toEqual(letter(review, before));
        expect(cautionsDue(noted, catalogue)).toEqual(cautionsDue(review, catalogue));
        expect(compareSessions(noted, [withNotes(before)], catalogue)).toEqual(
          compareSessions(review, [before], catalogue),
        );
        expect(compareReviews(noted, review, catalogue)).toEqual(compareReviews(review, review, catalogue));
      }),
      runs,
    );
  });

  it('stand in the sheet and in the notes of the clip, each as a note and under no severity', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const noted = withNotes(review);
        const added = noted.entries.flatMap(({ flags }) => flags).filter(({ severity }) => severity === null).length;
        const times = (text: string) => text.split(words).length - 1;
        expect(times(JSON.stringify(writeSheet(noted, grade(noted), catalogue)).toLowerCase())).toBe(added);
        expect(times(sheetCsv(noted, catalogue))).toBe(added);
        const [, ...records] = sheetCsv(noted, catalogue).split('\r\n');
        expect(records.filter((record) => record.includes(',note,'))).toHaveLength(added);
        for (const file of [sheetWebVtt(noted, catalogue), sheetSubRip(noted, catalogue)])
          expect(times(file.toLowerCase())).toBe(added);
        const listed = sheetData(noted, grade(noted), catalogue).flags.filter(({ note }) => note === words);
        expect(listed.map(({ severity, strokes, fault }) => [severity, strokes, fault])).toEqual(
          Array.from({ length: added }, () => [null, null, null]),
        );
        const comments = annotationPage(noted, catalogue).items.filter(({ motivation }) => motivation === 'commenting');
        expect(comments).toHaveLength(added);
      }),
      runs,
    );
  });
});

it('refuses a file whose note names a fault', () => {
  const review = withNotes(sessionOf([draft({ exercise: 'back-squat' })]));
  const squat = catalogue.exercises.find(({ id }) => id === 'back-squat');
  const entries = review.entries.map((entry) => ({
    ...entry,
    flags: entry.flags.map((flag) => ({
      ...flag,
      fault: squat?.faults.find(({ criterion }) => criterion === flag.criterion)?.id,
    })),
  }));
  expect(parseReview({ ...review, entries }, catalogue)).toMatchObject({
    ok: false,
    sentence: expect.stringMatching(/names a fault without a severity/),
  });
});
