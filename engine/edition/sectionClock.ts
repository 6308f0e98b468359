import { clockZeroUs, type Section } from '../framing/section.ts';
import type { SetMeasurement } from '../motion/measurement.ts';
import { laterBy } from '../motion/set/measureSection.ts';
import type { Clip, ClipFacts, Review } from '../review/review.ts';
import { type Moment, ticksToUs } from '../time/moment.ts';
import { type Edition, withClocks } from './edition.ts';
import { movedReview } from './movedReview.ts';

/**
 * An edition whose times are those of its clips as they play: a clip that shows a section of its footage begins with it, in letter
 * and sheet as in what is handed over.
 */
export function onSectionClocks(edition: Edition): Edition {
  const clips = edition.source.review.entries.flatMap((entry) => entry.clips).filter(({ section }) => section);
  if (clips.length === 0) return edition;
  const measures = new Map(edition.measures);
  for (const { id, section, facts } of clips) {
    const measured = measures.get(id);
    if (measured) measures.set(id, fromZero(measured, clockZeroUs(section, facts?.timeBase) - (facts?.startUs ?? 0)));
  }
  return withClocks(edition, reviewOnSectionClocks, measures);
}

const fromZero = (measured: SetMeasurement, zeroUs: number): SetMeasurement => laterBy(measured, -zeroUs / 1_000_000);

/** A review whose clips with a section are told as clips by themselves, from their first frame. */
export const reviewOnSectionClocks = (review: Review): Review =>
  movedReview(review, ({ section, ...clip }) => {
    if (section === undefined) return null;
    const { facts } = clip;
    const startUs = facts?.startUs ?? 0;
    const zeroUs = facts === undefined ? 0 : clockZeroUs(section, facts.timeBase);
    const move = (moment: Moment): Moment => {
      if ('seconds' in moment) return { seconds: Math.max(0, moment.seconds - (zeroUs - startUs) / 1_000_000) };
      const { frame, ticks } = moment;
      return { frame: Math.max(0, frame - section.from.frame), ticks: Math.max(0, ticks - section.from.ticks) };
    };
    const shown = clip.drawings && { drawings: clip.drawings.filter((drawing) => meets(drawing, section)) };
    return { clip: { ...clip, ...shown, ...(facts && { facts: factsOf(facts, section) }) }, move };
  });

type Timed = NonNullable<Clip['drawings']>[number];

const meets = ({ from, to }: Timed, section: Section): boolean =>
  ('seconds' in from || from.frame <= section.to.frame) && ('seconds' in to || to.frame >= section.from.frame);

/** What is known of a section: how long its last frame is up is not, so it is taken to be as long as the others. */
function factsOf({ startUs: _, ...facts }: ClipFacts, { from, to }: Section): ClipFacts {
  const frames = Math.max(1, to.frame - from.frame + 1);
  const usualUs = facts.frames > 0 ? facts.durationUs / facts.frames : 0;
  const durationUs = Math.round(ticksToUs(to.ticks - from.ticks, facts.timeBase) + usualUs);
  return { ...facts, frames, durationUs };
}
