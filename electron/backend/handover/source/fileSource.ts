import os from 'node:os';
import path from 'node:path';
import * as v from 'valibot';
import type { Edition } from '../../../../engine/edition/edition.ts';
import { findExercise } from '../../../../engine/exercises/catalogue.ts';
import { asFilmed } from '../../../../engine/framing/framing.ts';
import { turnedSize } from '../../../../engine/framing/picturePlaces.ts';
import { framesShown } from '../../../../engine/framing/section.ts';
import type { ManualRep } from '../../../../engine/motion/reps/setEdges.ts';
import { measureSection } from '../../../../engine/motion/set/measureSection.ts';
import { setUpSchema } from '../../../../engine/recording/setUp.ts';
import type { Clip, Entry, MeasuredEdge, Review } from '../../../../engine/review/review.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import { stepOf } from '../../../../engine/wording/sayJob.ts';
import { ProblemError } from '../../../contract/reply.ts';
import { secondsOf } from '../../measure/measuredReps.ts';
import { recordingOf } from '../../measure/measurementOfClip.ts';
import { recordMotion } from '../../measure/recordMotion.ts';
import { probeClip } from '../../media/probe/probeClip.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import { type HandoverSource, type HandoverWork, type OpenedClip, openedClip } from './handoverSource.ts';

/** A review file to hand over. */
export type ReviewFile = {
  /** Clips lie relative to it. */
  readonly file: string;
  readonly edition: Edition;
  /** Measures joints besides the disc: far slower. */
  readonly joints: boolean;
};

/** A review file with its clips, which are measured as they are opened. */
export function fileSource(tools: MediaTools, reviewFile: ReviewFile): HandoverSource {
  return {
    edition: reviewFile.edition,
    openClip: (clipId, work) => openClip(tools, { ...reviewFile, clipId }, work),
  };
}

/** An entry and its clip, by the clip's id. */
function findClip({ entries }: Review, clipId: string): { readonly entry?: Entry; readonly clip?: Clip } {
  const entry = entries.find(({ clips }) => clips.some(({ id }) => id === clipId));
  const clip = entry?.clips.find(({ id }) => id === clipId);
  return { ...(entry && { entry }), ...(clip && { clip }) };
}

async function openClip(
  tools: MediaTools,
  { file, joints, edition, clipId }: ReviewFile & { readonly clipId: string },
  { signal, report }: HandoverWork,
): Promise<OpenedClip> {
  const { entry, clip } = findClip(edition.review, clipId);
  // What may leave the desk says no path.
  const filed = findClip(edition.source.review, clipId).clip?.path;
  if (entry === undefined || clip === undefined || filed === undefined) {
    throw new ProblemError('not-found', 'footageUnnamed', { clip: clip?.name ?? clipId });
  }
  const footage = path.resolve(path.dirname(file), filed);
  const probe = await probeClip(tools, footage, { signal });
  const { table, hasAudio, facts, meanFps, realTimeFactor: own } = probe;
  const { framing = asFilmed } = clip;
  const shown = { ...turnedSize(probe.shown, framing.turnDeg), turnDeg: framing.turnDeg };
  const range = framesShown(clip.section, table);
  if (clip.facts !== undefined && clip.facts.frames !== facts.frames) {
    throw new ProblemError('bad-review', 'footageWrong', { file: path.basename(footage) });
  }
  const realTimeFactor = clip.realTimeFactor === 1 ? own : clip.realTimeFactor;
  const setUp = clip.setUp ?? v.parse(setUpSchema, {});
  const exercise = findExercise(edition.catalogue, entry.exercise);
  const order = {
    ...{ tools, clip: footage, table, shown, range, framesPerSecond: meanFps * realTimeFactor, clicks: setUp.clicks },
    wanted: [
      'disc' as const,
      ...(setUp.clicks.some(({ what }) => what === 'point') ? (['point'] as const) : []),
      ...(joints ? (['joints'] as const) : []),
    ],
    threads: os.availableParallelism(),
    courtesy: 'nobody' as const,
  };
  const onProgress: HandoverWork['report'] = (share, doing) => report(share, stepOf(clip.name, doing));
  const recording = recordingOf(await recordMotion(order, { signal, onProgress }));
  const measurement =
    exercise === undefined
      ? null
      : measureSection(
          { recording, table, shown, realTimeFactor, exercise, view: clip.view, setUp, edges: setEdges(clip, table) },
          range,
        );
  return openedClip({
    ...{ file: footage, table, shown, hasSound: hasAudio, facts, setUp, view: clip.view, recording, measurement },
    ...{ framing, range },
    drawings: clip.drawings ?? [],
    covered: [],
    narration: null,
  });
}

/** The edges of a clip's reps that a person set. */
function setEdges({ reps }: Clip, table: FrameTable): ManualRep[] {
  return reps.map((rep) => {
    const set = (edge: MeasuredEdge) => {
      const moment = rep[edge];
      return moment === undefined || rep.measured?.includes(edge) ? undefined : secondsOf(moment, table);
    };
    const [startS, stretchedEndS, endS] = [set('start'), set('stretchedEnd'), set('end')];
    return {
      ...(startS !== undefined && { startS }),
      ...(stretchedEndS !== undefined && { stretchedEndS }),
      ...(endS !== undefined && { endS }),
    };
  });
}
