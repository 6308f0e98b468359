import { framesShown, holds, tableOf } from '../../../engine/framing/section.ts';
import {
  cameraInFootage,
  discInFootage,
  jointsInFootage,
  type PlaceInFootage,
  pointInFootage,
} from '../../../engine/recording/framesOfRecording.ts';
import type { PointPx } from '../../../engine/recording/recording.ts';
import type { Click } from '../../../engine/recording/setUp.ts';
import type { Warning } from '../../../engine/recording/warnings.ts';
import { step } from '../../../engine/wording/sayJob.ts';
import { errorFacts } from '../log/log.ts';
import { type ReadOptions, readPictures } from '../media/read/readPictures.ts';
import type { Recorded, RecordedParts } from '../store/recordings.ts';
import { everyFramesFor, type JointReader, openJointReader } from './joints/jointReader.ts';
import { currentMethods } from './methods.ts';
import type { RecordingOrder, RecordingWork } from './recordMotion.ts';
import { trackDisc } from './trackDisc.ts';
import { trackPoint } from './trackPoint.ts';

/** Following a point takes a small share of what the rest takes. */
const pointShare = 0.1;

/** How many frames back the joints may still ask where the disc was. */
const framesKept = 256;

/** Work on one part: `onProgress` is told its share alone, what is being done is told of all of it. */
type PartWork = Pick<RecordingWork, 'signal'> & { readonly onProgress: (share: number) => void };

type Work = PartWork & { readonly reader: JointReader | null; readonly places: DiscPositions };

/** Where the disc was in the latest frames, so that of several people the one at the bar is looked at. */
type DiscPositions = Map<number, PointPx | null>;

/** The frames to look at as a clip by themselves: their table, and where they lie in the file. */
type PartOrder = Omit<RecordingOrder, 'range'> & Pick<ReadOptions, 'within'>;

/**
 * Looks at some frames of footage for the parts that are wanted, and at nothing else. Disc and joints share one decoding; a clicked
 * point, which needs frames in both directions from its click, has its own. What is given has one item for each frame of the
 * footage. Throws the problem that stopped it.
 */
export async function recordParts(order: RecordingOrder, work: RecordingWork): Promise<RecordedParts> {
  const { range = framesShown(null, order.table), table, clicks, ...rest } = order;
  const { firstFrame } = range;
  const parts = await recordFrames(
    {
      ...rest,
      table: tableOf(table, range),
      within: { table, firstFrame },
      // A review from elsewhere may speak of frames that this footage does not have.
      clicks: clicks
        .filter(({ frame }) => holds(range, frame) && frame < table.ticks.length)
        .map((click) => ({ ...click, frame: click.frame - firstFrame })),
    },
    work,
  );
  return partsInFootage(parts, { firstFrame, frames: table.ticks.length });
}

function partsInFootage({ disc, point, joints }: RecordedParts, place: PlaceInFootage): RecordedParts {
  const inFootage = <T>(part: Recorded<T>, found: T | null): Recorded<T> => ({
    ...part,
    found,
    warnings: part.warnings.map((one) => warningInFootage(one, place)),
    ...(part.camera && { camera: cameraInFootage(part.camera, place) }),
  });
  return {
    ...(disc && { disc: inFootage(disc, disc.found && discInFootage(disc.found, place)) }),
    ...(point && { point: inFootage(point, point.found && pointInFootage(point.found, place)) }),
    ...(joints && { joints: inFootage(joints, joints.found && jointsInFootage(joints.found, place)) }),
  };
}

function warningInFootage(told: Warning, { firstFrame }: PlaceInFootage): Warning {
  const { frame } = told.values;
  return typeof frame === 'number' ? { ...told, values: { ...told.values, frame: frame + firstFrame } } : told;
}

async function recordFrames(order: PartOrder, work: RecordingWork): Promise<RecordedParts> {
  const wants = (part: RecordingOrder['wanted'][number]) => order.wanted.includes(part);
  const places: DiscPositions = new Map();
  const reader = wants('joints') ? await openReader(order, work, places) : null;
  try {
    const mainEndsAt = wants('point') ? (wants('disc') || reader ? 1 - pointShare : 0) : 1;
    const doing = step(reader ? 'lookingForDiscAndJoints' : 'lookingForDisc');
    const main: Work = { ...work, reader, places, onProgress: (share) => work.onProgress(share * mainEndsAt, doing) };
    const disc = wants('disc') ? await recordDisc(order, main) : undefined;
    if (reader && !disc) await readJointsAlone(order, main);
    await readAgain(order, main);
    const joints = reader ? await jointsOf(reader) : undefined;
    const onProgress = (share: number) =>
      work.onProgress(mainEndsAt + share * (1 - mainEndsAt), step('followingPoint'));
    const point = wants('point') ? await recordPoint(order, { ...work, onProgress }) : undefined;
    return { ...(disc && { disc }), ...(point && { point }), ...(joints && { joints }) };
  } finally {
    await reader?.close();
  }
}

function openReader(order: PartOrder, { onSlower }: RecordingWork, places: DiscPositions): Promise<JointReader> {
  const { shown, framesPerSecond, threads, courtesy } = order;
  return openJointReader({
    picture: shown,
    workers: threads,
    courtesy,
    framesPerSecond,
    everyFrames: everyFramesFor(framesPerSecond),
    clicks: clicksOn(order, 'lifter'),
    near: (frame) => places.get(frame) ?? null,
    onSlower: (reason) => onSlower?.(errorFacts(reason)),
  });
}

async function recordDisc(order: PartOrder, { reader, places, signal, onProgress }: Work) {
  const { tools, clip, table, within, shown } = order;
  const { disc, camera, warnings } = await trackDisc(tools, clip, {
    ...{ table, within, shown },
    clicks: clicksOn(order, 'disc'),
    signal,
    onProgress: (share) => onProgress(share),
    ...(reader && {
      alongside: (frame, bytes, disc) => {
        places.set(frame, disc);
        places.delete(frame - framesKept);
        return reader.push(frame, bytes);
      },
    }),
  });
  return { ...recorded('disc', disc, warnings), camera };
}

async function recordPoint(order: PartOrder, { signal, onProgress }: PartWork) {
  const { tools, clip, table, within, shown } = order;
  const { point, warnings } = await trackPoint(tools, clip, {
    ...{ table, within, shown },
    clicks: clicksOn(order, 'point'),
    signal,
    onProgress: (share) => onProgress(share),
  });
  return recorded('point', point, warnings);
}

async function readJointsAlone({ tools, clip, table, within, shown }: PartOrder, { reader, signal, onProgress }: Work) {
  const pictures = { table, within, shown, planes: 'colour', bytes: 'shared', signal } as const;
  for await (const { frame, bytes } of readPictures(tools, clip, pictures)) {
    await reader?.push(frame, bytes);
    onProgress((frame + 1) / table.ticks.length);
  }
}

/** Gives the reader once more what it followed somebody else in than the one who turned out to be the lifter. */
async function readAgain({ tools, clip, table, within, shown }: PartOrder, { reader, signal }: Work) {
  if (reader === null) return;
  for (;;) {
    const frames = new Set(await reader.framesToSeeAgain());
    if (frames.size === 0) return;
    const range = { firstFrame: Math.min(...frames), lastFrame: Math.max(...frames) };
    for await (const { frame, bytes } of readPictures(tools, clip, {
      ...{ table, within, shown },
      planes: 'colour',
      bytes: 'shared',
      signal,
      ...range,
    })) {
      if (frames.has(frame)) await reader.push(frame, bytes);
    }
  }
}

async function jointsOf(reader: JointReader) {
  const { joints, warnings } = await reader.finish();
  return recorded('joints', joints, warnings);
}

function recorded<T>(part: keyof typeof currentMethods, found: T | null, warnings: readonly Warning[]): Recorded<T> {
  return { method: currentMethods[part], found, warnings };
}

const clicksOn = ({ clicks }: PartOrder, what: Click['what']) => clicks.filter((click) => click.what === what);
