import { Ruler } from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import type { ClipMedia } from '../../electron/contract/clips.ts';
import type { Clip, Flag } from '../../engine/review/review.ts';
import { share } from '../base/figures.ts';
import { type ClipTables, measuresState } from '../state/clipState.ts';
import { jobsState } from '../state/jobsState.ts';
import { reviewState } from '../state/reviewState.ts';
import { sayStage } from '../words/sayStage.ts';
import { isUnderWay, measure, openMeasuring } from './commands/measuring.ts';
import { ReviewButton } from './commands/ReviewDeskProvider.tsx';
import { DrawBar } from './drawings/DrawBar.tsx';
import { NarrateBar } from './narration/NarrateBar.tsx';
import { PictureMenu } from './stage/PictureMenu.tsx';
import { Readout } from './stage/Readout.tsx';
import { Transport } from './stage/Transport.tsx';
import { CurvesLegend } from './strip/CurvesLegend.tsx';
import { Strip } from './strip/Strip.tsx';

type ClipTimelineProps = {
  readonly clip: Clip;
  readonly media: ClipMedia;
  readonly flags: readonly Flag[];
  readonly tables: ClipTables | null;
};

/** Controls, strip and times of one clip. */
export function ClipTimeline({ clip, media, flags, tables }: ClipTimelineProps) {
  const readable = tables !== null && tables.table.ticks.length > 0;
  const readOnly = reviewState((state) => state.data?.readOnly === true);
  return (
    <div className="clip-timeline">
      <div className="under-stage">
        <Transport />
        {!readOnly && <MeasureButton clipId={clip.id} />}
        <PictureMenu />
      </div>
      {readable && (
        <>
          {!readOnly && <NarrateBar key={clip.id} clip={clip} />}
          <DrawBar clip={clip} media={media} table={tables.table} />
          <Strip clip={clip} media={media} flags={flags.filter((flag) => flag.clip === clip.id)} table={tables.table} />
          <div className="under-strip">
            <Readout clip={clip} table={tables.table} />
            <CurvesLegend clipId={clip.id} />
          </div>
        </>
      )}
    </div>
  );
}

/** Measures the clip on the stage, and tells how far that is; gone once it is measured. */
function MeasureButton({ clipId }: { readonly clipId: string }) {
  const job = jobsState(useShallow(({ jobs }) => openMeasuring(jobs, clipId)));
  const recorded = measuresState((state) => state.clipId === clipId && state.measures?.recordedAt != null);
  if (recorded && !isUnderWay(job)) return null;
  const words = isUnderWay(job)
    ? { words: sayStage('underWay', { share: job.progress === null ? '' : share(job.progress) }) }
    : {};
  return (
    <ReviewButton command={measure} shows={isUnderWay(job) ? 'words' : 'key'} {...words}>
      <Ruler aria-hidden="true" />
    </ReviewButton>
  );
}
