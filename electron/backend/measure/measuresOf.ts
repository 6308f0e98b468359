import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import type { Review } from '../../../engine/review/review.ts';
import type { Context } from '../context/context.ts';
import { clipToMeasure } from './clipToMeasure.ts';
import { measurementOfClip } from './measured.ts';

/** What is measured of a session's clips, by clip; those that were not measured are left out. */
export function measuresOf(context: Context, { entries }: Review): ReadonlyMap<string, SetMeasurement> {
  const library = context.library();
  const measured = entries.flatMap(({ clips }) =>
    clips.flatMap(({ id }) => {
      const measurement = measurementOfClip(library, clipToMeasure(context, library.reading, id));
      return measurement === null ? [] : [[id, measurement] as const];
    }),
  );
  return new Map(measured);
}
