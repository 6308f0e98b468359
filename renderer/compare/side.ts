import type { Result } from '../../electron/contract/requests.ts';
import { framesShown } from '../../engine/framing/section.ts';
import type { Clip, Flag } from '../../engine/review/review.ts';
import { frameAtUs, frameStartUs } from '../../engine/time/frames.ts';
import { mediaToLiftingUs } from '../../engine/time/moment.ts';
import { read } from '../bridge/read.ts';
import type { Loop } from '../player/player.ts';
import { repFrames, samePhase } from '../player/repFrames.ts';
import { type ClipMeasures, type ClipTables, tablesState } from '../state/clipState.ts';

export type AlikeClip = Result<'clips.alike'>[number];

/** One side of the comparison: a clip that can be played, the rep that is laid beside the other, and what is known of it. */
export type Side = {
  readonly sessionId: string;
  readonly date: string;
  readonly exercise: string;
  readonly units: 'kg' | 'lb';
  readonly clip: Clip;
  /** The size of its upright picture. */
  readonly picture: { readonly width: number; readonly height: number };
  readonly tables: ClipTables;
  readonly rep: number;
  /** Flags of this clip. */
  readonly flags: readonly Flag[];
  readonly measurement: ClipMeasures['measurement'];
};

/** Loads a clip of a session with its times; null when it can't be shown or has no reps marked. */
export async function loadSide(sessionId: string, clipId: string, rep: number | null): Promise<Side | null> {
  const [answer, tables, measures] = await Promise.all([
    read('review.get', { sessionId }),
    tablesState.getState().load(clipId),
    read('measures.get', { clipId }),
  ]);
  const entry = answer?.review.entries.find(({ clips }) => clips.some(({ id }) => id === clipId));
  const clip = entry?.clips.find(({ id }) => id === clipId);
  const [first] = clip?.reps ?? [];
  if (answer === null || entry === undefined || clip === undefined || tables === null || first === undefined)
    return null;
  const { review, media } = answer;
  const { width, height } = media.find((one) => one.clipId === clipId) ?? { width: 0, height: 0 };
  const wanted = clip.reps.some((one) => one.index === rep) ? rep : null;
  return {
    ...{
      sessionId,
      clip,
      tables,
      picture: { width, height },
      date: review.session.date,
      exercise: entry.exercise,
      units: review.trainee.units,
      rep: wanted ?? first.index,
    },
    flags: entry.flags
      .filter((flag) => flag.clip === clipId)
      .map((flag, at) => ({ ...flag, id: flag.id ?? String(at) })),
    measurement: measures?.measurement ?? null,
  };
}

/** What both sides have in common at each moment. */
export type InStep = 'phase' | 'time';

const timed = ({ clip, rep, tables }: Side, index = rep) => ({ reps: clip.reps, index, table: tables.table });

/** The frame of one side that belongs to a frame of the other: at the same phase, or as long into the rep in lifting time. */
export function frameInStep(frame: number, from: Side, to: Side, inStep: InStep): number | null {
  if (inStep === 'phase') return samePhase(frame, timed(from), timed(to));
  const own = repFrames(from.clip.reps, from.rep, from.tables.table);
  const other = repFrames(to.clip.reps, to.rep, to.tables.table);
  if (own === null || other === null) return null;
  const since = frameStartUs(from.tables.table, frame) - frameStartUs(from.tables.table, own.first);
  const lifting = mediaToLiftingUs(Math.max(0, since), from.clip.realTimeFactor);
  const us = frameStartUs(to.tables.table, other.first) + Math.round(lifting * to.clip.realTimeFactor);
  return Math.min(other.last, frameAtUs(to.tables.table, us));
}

/** The frames that a clip shows of its footage, for its player. */
export function framesOfSide({ clip, tables }: Pick<Side, 'clip' | 'tables'>): Loop {
  const { firstFrame, lastFrame } = framesShown(clip.section, tables.table);
  return { first: firstFrame, last: lastFrame };
}

/** Where a side goes when another of its reps is chosen: to the phase that the frame has in the rep before. */
export const frameInRep = (frame: number, side: Side, rep: number): number | null =>
  samePhase(frame, timed(side), timed(side, rep));

/** Flags that speak of the rep shown: of it, or of the whole set. */
export const flagsOfRep = ({ flags, rep }: Side): readonly Flag[] =>
  flags.filter(({ reps }) => reps === 'set' || reps.includes(rep));
