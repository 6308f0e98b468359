import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { type Edition, withClocks, withFootage } from '../../../../engine/edition/edition.ts';
import { onSectionClocks, reviewOnSectionClocks } from '../../../../engine/edition/sectionClock.ts';
import { seenSize } from '../../../../engine/framing/picturePlaces.ts';
import { tableOf } from '../../../../engine/framing/section.ts';
import type { ClipInFolder, FileInFolder } from '../../../../engine/handover/handoverFolder.ts';
import { writeIndexPage } from '../../../../engine/handover/indexPage.ts';
import { laterBy } from '../../../../engine/motion/set/measureSection.ts';
import { clockUsAt, frameEndUs, frameStartUs, tableFromZero } from '../../../../engine/time/frames.ts';
import { step } from '../../../../engine/wording/sayJob.ts';
import type { HandoverOptions } from '../../../contract/handover.ts';
import { localDay, usualDaysToFilming } from '../../../contract/localDay.ts';
import { ProblemError } from '../../../contract/reply.ts';
import { htmlFaces } from '../../documents/htmlFaces.ts';
import { uprightSize } from '../../media/probe/streams.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import type { HandoverSource, HandoverWork } from '../source/handoverSource.ts';
import { listFiles, type Manifest, manifestName } from './manifest.ts';
import { type FootageCopy, reviewAsPlayed, reviewOnFrames, type SameFrames } from './playedReview.ts';
import { startPageScript } from './startPageScript.ts';
import { type ClipOfHandover, writeClips } from './writeClips.ts';
import { writeDocuments } from './writeDocuments.ts';

/** Which handover of a session is written, when and how. */
export type HandoverOrder = {
  readonly source: HandoverSource;
  readonly options: HandoverOptions;
  /** 1 for the first, a correction is the next. */
  readonly version: number;
  /** ISO time. */
  readonly handedAt: string;
};

const clipsShare = 0.9;

/**
 * Writes a handover into an empty folder: clips, documents, the page to start from, and at the end the manifest. Clips
 * that fail are named in it. Throws `cancelled`, or what keeps a document from being written.
 */
export async function writeHandover(
  tools: MediaTools,
  folder: string,
  { source, options, version, handedAt }: HandoverOrder,
  { signal, report }: HandoverWork,
): Promise<Manifest> {
  const stopIfCancelled = () => {
    if (signal.aborted) throw new ProblemError('cancelled', 'cancelled');
  };
  stopIfCancelled();
  const wanted = { ...options, originals: options.originals ?? options.clips, stills: true };
  const clips = await writeClips(
    tools,
    folder,
    { source, wanted },
    {
      signal,
      report: (share, message) => report(clipsShare * share, message),
    },
  );
  stopIfCancelled();
  report(clipsShare, step('documents'));
  const filmed = withFootage(source.edition, seenIn(clips));
  const { review, catalogue, names } = filmed;
  const edition = onPlayedClocks(filmed, clips);
  const shown = new Map(clips.flatMap((clip) => playableOf(clip)));
  const copiesPlayed = new Map([...shown].map(([id, { copy }]) => [id, copy.played]));
  const played = reviewOnSectionClocks(reviewAsPlayed(review, copiesPlayed));
  const copies = new Map(clips.flatMap((clip) => copyOf(clip)));
  const documents = await writeDocuments(folder, {
    edition,
    played,
    kept: reviewOnSectionClocks(reviewOnFrames(review, copies)),
    stills: new Map(clips.flatMap(({ opened }) => [...(opened?.written.stills ?? [])])),
    notes: new Map(clips.map(({ clipId, names }) => [clipId, names.notes(shown.get(clipId)?.copy.file ?? null)])),
    clipFiles: new Map([...shown].map(([clipId, { copy }]) => [clipId, copy.file])),
    sheet: options.sheet,
    paper: options.paper,
    version,
    handedAt,
    nextFilming: options.nextFilming ?? localDay(new Date(handedAt), usualDaysToFilming),
  });
  stopIfCancelled();
  const made: readonly FileInFolder[] = clips.flatMap(({ opened }) => opened?.written.files ?? []);
  const index = writeIndexPage({
    review: played,
    catalogue,
    plan: edition.plan(),
    clips: new Map([...shown].map(([clipId, { clip }]) => [clipId, clip])),
    files: [...documents, ...made],
    notices: edition.notices(),
    script: await startPageScript(),
    faces: htmlFaces(JSON.stringify(played)),
  });
  await writeFile(path.join(folder, 'index.html'), index);
  report(0.98, step('finishing'));
  const manifest: Manifest = {
    format: 'rackside-handover',
    version: 1,
    handover: version,
    handedAt,
    date: review.session.date,
    rubric: { id: catalogue.rubric.id, version: catalogue.rubric.version },
    language: edition.style.language,
    names,
    failed: clips.flatMap(({ failed }) => failed),
    files: await listFiles(folder),
  };
  await writeFile(path.join(folder, manifestName), `${JSON.stringify(manifest, null, 2)}\n`);
  stopIfCancelled();
  return manifest;
}

/** What opening the clips told. */
function seenIn(clips: readonly ClipOfHandover[]): Parameters<typeof withFootage>[1] {
  const opened = clips.flatMap(({ clipId, opened }) => (opened === null ? [] : [{ clipId, ...opened }]));
  return {
    facts: new Map(opened.map(({ clipId, facts }) => [clipId, facts])),
    measures: new Map(
      opened.flatMap(({ clipId, measurement }) => (measurement === null ? [] : [[clipId, measurement]])),
    ),
  };
}

/** The clip by itself in the folder, for another coach's Rackside: the original where it may leave. */
function copyOf({ clipId, opened }: ClipOfHandover): readonly (readonly [string, SameFrames])[] {
  const copy = opened?.written.original ?? opened?.written.plain ?? null;
  if (opened === null || copy === null) return [];
  const { file, table, played } = copy;
  const { facts, footage, range } = played;
  const known = { file, table, facts, footage, range };
  if (opened.written.original !== null) return [[clipId, known]];
  const { part } = opened;
  const scale = uprightSize(facts).width / seenSize(part).width;
  return [[clipId, { ...known, copy: { part, scale } }]];
}

/** The edition told by the clocks of the clips in the folder, which begin with their first frames. */
function onPlayedClocks(edition: Edition, clips: readonly ClipOfHandover[]): Edition {
  const late = new Map(
    clips.flatMap(({ clipId, opened }) => {
      if (opened === null) return [];
      const { table: footage, range, facts } = opened;
      const own = tableOf(footage, range);
      if (frameStartUs(own, 0) === 0 && own.ticks.length === footage.ticks.length) return [];
      const { startUs: _, ...fromZero } = facts;
      const frames = own.ticks.length;
      const durationUs = frameEndUs(own, frames - 1) - frameStartUs(own, 0);
      const told = { ...fromZero, frames, durationUs };
      return [[clipId, { table: tableFromZero(own), facts: told, footage, range }] as const];
    }),
  );
  const measures = new Map(edition.measures);
  for (const [clipId, { footage, range }] of late) {
    const measured = measures.get(clipId);
    if (measured) measures.set(clipId, laterBy(measured, -clockUsAt(footage, range.firstFrame) / 1_000_000));
  }
  const told = late.size === 0 ? edition : withClocks(edition, (review) => reviewOnFrames(review, late), measures);
  // Of a clip whose footage is gone, what its section says has to do.
  return onSectionClocks(told);
}

type OnPage = { readonly copy: FootageCopy; readonly clip: ClipInFolder };

/**
 * What the page plays: the clip by itself, with path and angles over it; where it was left out or failed, the annotated clip, which has
 * them in its picture and a time of its own.
 */
function playableOf({ clipId, opened }: ClipOfHandover): readonly (readonly [string, OnPage])[] {
  if (opened === null) return [];
  const { written, table: footage, range, part, measurement, camera, body } = opened;
  const shown = seenSize(part);
  const { annotated, original, plain } = written;
  // A phone shows black before it plays, and fetches no frame by itself.
  const poster = written.poster === null ? {} : { poster: written.poster };
  const filmed = plain ?? original;
  if (filmed !== null) {
    const { file, table } = filmed;
    return [
      [
        clipId,
        {
          copy: filmed,
          clip: { file, table, shown, measurement, camera, body, from: { footage, range, part }, ...poster },
        },
      ],
    ];
  }
  if (annotated === null) return [];
  const { file, table, played } = annotated;
  const inPicture = { measurement: null, camera: null, body: null, clockUs: played.clockUs };
  return [[clipId, { copy: annotated, clip: { file, table, shown, ...inPicture, ...poster } }]];
}
