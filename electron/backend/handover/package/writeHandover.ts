import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { withFootage } from '../../../../engine/edition/edition.ts';
import type { ClipInFolder, FileInFolder } from '../../../../engine/handover/handoverFolder.ts';
import { writeIndexPage } from '../../../../engine/handover/indexPage.ts';
import type { HandoverOptions } from '../../../contract/handover.ts';
import { localDay, usualDaysToFilming } from '../../../contract/localDay.ts';
import { ProblemError } from '../../../contract/reply.ts';
import { htmlFaces } from '../../documents/htmlFaces.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import type { HandoverSource, HandoverWork } from '../source/handoverSource.ts';
import { listFiles, type Manifest, manifestName } from './manifest.ts';
import { type FootageCopy, reviewAsPlayed, reviewOnCopies } from './playedReview.ts';
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
  const wanted = { ...options, stills: true };
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
  report(clipsShare, 'Documents');
  const edition = withFootage(source.edition, seenIn(clips));
  const { review, catalogue, names } = edition;
  const shown = new Map(clips.flatMap((clip) => playableOf(clip)));
  const played = reviewAsPlayed(review, new Map([...shown].map(([id, { copy }]) => [id, copy.played])));
  const originals = new Map(
    clips.flatMap(({ clipId, opened }) =>
      opened?.written.original ? [[clipId, opened.written.original] as const] : [],
    ),
  );
  const documents = await writeDocuments(folder, {
    edition,
    played,
    kept: reviewOnCopies(review, originals),
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
    script: await startPageScript(),
    faces: htmlFaces(JSON.stringify(played)),
  });
  await writeFile(path.join(folder, 'index.html'), index);
  report(0.98, 'Counting up');
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

type OnPage = { readonly copy: FootageCopy; readonly clip: ClipInFolder };

/**
 * What the page plays: the footage where it is there and every browser plays it, with path and angles over it; else the
 * annotated clip, which has them in its picture.
 */
function playableOf({ clipId, opened }: ClipOfHandover): readonly (readonly [string, OnPage])[] {
  if (opened === null) return [];
  const { written, shown, measurement, camera, body } = opened;
  const { annotated, original } = written;
  // A phone shows black before it plays, and fetches no frame by itself.
  const poster = written.poster === null ? {} : { poster: written.poster };
  if (original !== null && (original.played.facts.codec === 'h264' || annotated === null)) {
    const { file, table } = original;
    return [[clipId, { copy: original, clip: { file, table, shown, measurement, camera, body, ...poster } }]];
  }
  if (annotated === null) return [];
  const { file, table } = annotated;
  return [
    [clipId, { copy: annotated, clip: { file, table, shown, measurement: null, camera: null, body: null, ...poster } }],
  ];
}
