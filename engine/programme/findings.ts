import type { Catalogue } from '../exercises/catalogue.ts';
import { equipmentOf } from '../review/parts.ts';
import type { Review } from '../review/review.ts';
import { severities } from '../rubric/rubric.ts';
import type { ProgrammeFinding } from './finding.ts';
import { holdFindings } from './holds.ts';
import { isOnLadder, ladderFindings } from './ladder.ts';
import { idsOf, isUnloaded, liftsOf } from './lift.ts';
import { orderFindings, setOrderFindings } from './order.ts';
import { profileFindings } from './profile.ts';
import { railFindings } from './rail.ts';
import { rangeCutFindings } from './rangeCut.ts';
import { repFindings } from './reps.ts';
import { volumeFindings } from './volume.ts';
import { type TrainedSession, weekFindings } from './week.ts';

/**
 * What the plan of one session could do better for the trainee's goal and with what is at hand: sets a muscle, reps, order,
 * holds and loads at the shortened end, range cut by the set-up, steps towards a lift, the way a guided bar travels; and, where
 * earlier sessions are known, sets a week and days of rest. Heaviest first. Of a session without any plan only what the
 * choice of exercises and the film say, at no cost.
 */
export function programmeFindings(
  review: Review,
  catalogue: Catalogue,
  earlier: readonly TrainedSession[] = [],
): ProgrammeFinding[] {
  const lifts = liftsOf(review, catalogue);
  const { trainee } = review;
  const { goal } = trainee;
  const equipment = equipmentOf(review);
  const ladders = ladderFindings({ lifts, catalogue, equipment, trainee });
  const ofExercises = [
    ...ladders,
    ...rangeCutFindings(lifts, catalogue, { goal, equipment }),
    ...railFindings(lifts, catalogue, equipment),
  ];
  if (review.entries.every((entry) => entry.plan === undefined)) {
    return ofExercises.map((finding) => ({ ...finding, restsOn: 'film' }));
  }
  const onLadder = lifts.filter((lift) => isUnloaded(lift) && isOnLadder(lift, lifts));
  const hasLadder = new Set([...ladders.flatMap(({ entryIds }) => entryIds), ...idsOf(onLadder)]);
  return [
    ...volumeFindings(lifts, trainee),
    ...ofExercises,
    ...repFindings(lifts, goal, hasLadder),
    ...orderFindings(lifts, goal),
    ...setOrderFindings(lifts, goal),
    ...(goal === 'growth' ? [...holdFindings(lifts), ...profileFindings(lifts, catalogue, equipment)] : []),
    ...weekFindings(review, earlier, catalogue),
  ].sort((a, b) => severities.indexOf(b.severity) - severities.indexOf(a.severity));
}
