import { CameraFollower } from '../../../engine/motion/camera/cameraFollower.ts';
import { DiscFollower } from '../../../engine/motion/disc/discFollower.ts';
import { DiscTracker } from '../../../engine/motion/disc/discTracker.ts';
import { EvidenceOfDisc } from '../../../engine/motion/disc/evidence.ts';
import { learnClicked } from '../../../engine/motion/disc/learnClicked.ts';
import type { LearntDisc } from '../../../engine/motion/disc/learnDisc.ts';
import type { GreyPicture } from '../../../engine/motion/picture/picture.ts';
import type {
  CameraPath,
  DiscEvidence,
  DiscRecording,
  Outline,
  PointPx,
  Sighting,
} from '../../../engine/recording/recording.ts';
import type { Click } from '../../../engine/recording/setUp.ts';
import { type Warning, warning } from '../../../engine/recording/warnings.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { UprightPicture } from '../media/probe/streams.ts';
import { type ReadOptions, readPictures } from '../media/read/readPictures.ts';
import type { MediaTools } from '../media/tools/mediaTools.ts';
import { greyOf, longestLostFrames, readBackward, secondsOfFrame } from './greyFrames.ts';
import { currentMethods } from './methods.ts';

export type TrackOptions = {
  readonly table: FrameTable;
  readonly within?: ReadOptions['within'];
  readonly shown: UprightPicture;
  readonly clicks: readonly Click[];
  readonly signal?: AbortSignal | undefined;
  readonly onProgress?: (share: number) => void;
  /** Gets each frame of the main pass in colour, and where the disc is as far as is known by then: one decoding feeds others too. */
  readonly alongside?: (frame: number, bytes: Uint8Array, disc: PointPx | null) => Promise<void>;
};

/** Places and sizes of the disc, one a frame. */
type Seen = { readonly sightings: (Sighting | null)[]; readonly radiiPx: (number | null)[] };

/** What was seen of the disc, its rim, and what speaks for it; `outline` null = none was found. */
type Followed = Seen & { readonly outline: Outline | null; readonly evidence: DiscEvidence | null };

/** A click at which a disc was learnt. */
type Anchor = { readonly frame: number; readonly learnt: LearntDisc };

/** How many frames in a row two ways of following must agree for one to end. */
const agreeingFrames = 6;
const doubtfulConfidence = 0.45;

/**
 * Follows the near disc through a clip in one pass: the one that moves, or those that were clicked. What a click comes
 * after is followed backward from it. `disc` null: there is none, and `warnings` says so; how the camera moved is told all the same.
 */
export async function trackDisc(
  tools: MediaTools,
  clip: string,
  options: TrackOptions,
): Promise<{ disc: DiscRecording | null; camera: CameraPath; warnings: Warning[] }> {
  const warnings: Warning[] = [];
  const anchors = await learnAnchors(tools, clip, options, warnings);
  const camera = new CameraFollower(options.shown);
  const { sightings, radiiPx, outline, evidence } =
    anchors.length > 0
      ? await followClicks(tools, clip, { options, anchors, camera })
      : await followMover(tools, clip, { options, camera });
  const path = camera.finish();
  if (path.moves && !path.removable) {
    warnings.push(warning('cameraMoves', {}));
  }
  if (!outline) {
    warnings.push(warning('noDisc', {}));
    return { disc: null, camera: path, warnings };
  }
  const lost = sightings.filter((sighting) => sighting === null).length;
  if (lost > sightings.length * 0.1) {
    warnings.push(warning('discLost', { lost, frames: sightings.length }));
  }
  const doubtful = sightings.filter((sighting) => sighting !== null && sighting.confidence < doubtfulConfidence).length;
  if (doubtful > sightings.length * 0.2) {
    warnings.push(warning('discDoubtful', { doubtful, frames: sightings.length }));
  }
  const seen = { frames: sightings, outline, radiiPx, ...(evidence && { evidence }) };
  return { disc: { method: currentMethods.disc, ...seen, camera: path }, camera: path, warnings };
}

async function learnAnchors(
  tools: MediaTools,
  clip: string,
  { table, within, shown, clicks, signal }: TrackOptions,
  warnings: Warning[],
): Promise<Anchor[]> {
  const anchors: Anchor[] = [];
  for (const { frame, at, radiusPx, box } of [...clicks].sort((one, other) => one.frame - other.frame)) {
    const range = { firstFrame: frame, lastFrame: frame };
    const reading = { table, within, shown, planes: 'grey', signal, ...range } as const;
    for await (const { bytes } of readPictures(tools, clip, reading)) {
      const learnt = learnClicked(greyOf(bytes, shown), { at, radiusPx, box });
      if (learnt) anchors.push({ frame, learnt });
      else warnings.push(warning('noRimAtClick', { frame }));
    }
  }
  return anchors;
}

type Following = { readonly options: TrackOptions; readonly camera: CameraFollower };

async function followMover(tools: MediaTools, clip: string, { options, camera }: Following): Promise<Followed> {
  const tracker = new DiscTracker();
  await eachFrame(tools, clip, options, (frame, picture) => {
    const shift = camera.next(picture);
    tracker.next(picture, secondsOfFrame(options.table, frame), shift);
    return tracker.position;
  });
  const tracked = tracker.finish();
  const seen = nothingSeen(options);
  if (!tracked) return { ...seen, outline: null, evidence: null };
  tracked.sightings.forEach((sighting, index) => {
    seen.sightings[tracked.firstFrame + index] = sighting;
    seen.radiiPx[tracked.firstFrame + index] = tracked.radiiPx[index] ?? null;
  });
  const anchor = { frame: tracked.firstFrame, learnt: tracked.learnt };
  await followBack(tools, clip, { options, anchor, downTo: 0, seen });
  return { ...seen, outline: tracked.outline, evidence: tracked.evidence };
}

async function followClicks(
  tools: MediaTools,
  clip: string,
  { options, anchors, camera }: Following & { readonly anchors: readonly Anchor[] },
): Promise<Followed> {
  const seen = nothingSeen(options);
  const evidence = new EvidenceOfDisc();
  let follower: DiscFollower | null = null;
  let outline: Outline | null = null;
  await eachFrame(tools, clip, options, (frame, picture) => {
    const shift = camera.next(picture);
    const atS = secondsOfFrame(options.table, frame);
    const anchor = anchors.findLast((one) => one.frame === frame);
    if (anchor) {
      outline ??= follower?.outline() ?? null;
      follower = new DiscFollower(anchor.learnt, atS);
    }
    const sighting = follower?.follow(picture, atS) ?? null;
    note(seen, frame, { sighting, follower });
    if (follower && sighting) evidence.add(picture, follower, shift.yPx);
    return sighting;
  });
  const last: DiscFollower | null = follower;
  outline ??= outlineOf(last);
  for (const [index, anchor] of anchors.entries()) {
    await followBack(tools, clip, { options, anchor, downTo: (anchors[index - 1]?.frame ?? -1) + 1, seen });
  }
  return { ...seen, outline, evidence: evidence.result(circlesOf(last)) };
}

const outlineOf = (follower: DiscFollower | null): Outline | null => follower?.outline() ?? null;

/**
 * Follows a disc backward from where it was clicked, over what was found going forward, until both agree again or it is
 * lost for long.
 */
async function followBack(
  tools: MediaTools,
  clip: string,
  {
    options: { table, within, shown, signal },
    anchor,
    downTo,
    seen,
  }: {
    readonly options: TrackOptions;
    readonly anchor: Anchor;
    readonly downTo: number;
    readonly seen: Seen;
  },
): Promise<void> {
  if (anchor.frame <= downTo) return;
  const follower = new DiscFollower(anchor.learnt, secondsOfFrame(table, anchor.frame));
  const range = { firstFrame: downTo, lastFrame: anchor.frame - 1 };
  let agreeing = 0;
  const reading = { table, within, shown, planes: 'grey', signal, ...range } as const;
  for await (const { frame, bytes } of readBackward(tools, clip, reading)) {
    const sighting = follower.follow(greyOf(bytes, shown), secondsOfFrame(table, frame));
    const before = seen.sightings[frame] ?? null;
    const nearPx = 0.05 * anchor.learnt.shape.radiusPx;
    const agree = sighting && before && Math.hypot(sighting.xPx - before.xPx, sighting.yPx - before.yPx) <= nearPx;
    agreeing = agree ? agreeing + 1 : 0;
    if (agreeing >= agreeingFrames || follower.missed > longestLostFrames) return;
    if (sighting) note(seen, frame, { sighting, follower });
  }
}

const circlesOf = (follower: DiscFollower | null): number => (follower ? follower.rings.length - 1 : 0);

const nothingSeen = ({ table }: TrackOptions): Seen => ({
  sightings: table.ticks.map(() => null),
  radiiPx: table.ticks.map(() => null),
});

function note(
  { sightings, radiiPx }: Seen,
  frame: number,
  { sighting, follower }: { readonly sighting: Sighting | null; readonly follower: DiscFollower | null },
): void {
  sightings[frame] = sighting;
  radiiPx[frame] = sighting && follower ? follower.shape.radiusPx : null;
}

async function eachFrame(
  tools: MediaTools,
  clip: string,
  { table, within, shown, signal, onProgress, alongside }: TrackOptions,
  follow: (frame: number, picture: GreyPicture) => PointPx | null,
): Promise<void> {
  const planes = alongside ? 'colour' : 'grey';
  // Whoever works alongside copies what it keeps.
  const kind = { planes, bytes: 'shared' } as const;
  for await (const { frame, bytes } of readPictures(tools, clip, { table, within, shown, signal, ...kind })) {
    const seen = follow(frame, greyOf(bytes, shown));
    await alongside?.(frame, bytes, seen);
    onProgress?.((frame + 1) / table.ticks.length);
  }
}
