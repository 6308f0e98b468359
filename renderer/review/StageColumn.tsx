import { Ruler } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { useShallow } from 'zustand/react/shallow';
import type { ClipMedia } from '../../electron/contract/clips.ts';
import type { Clip, Flag } from '../../engine/review/review.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';
import { share } from '../base/figures.ts';
import { type ClipTables, measuresState } from '../state/clipState.ts';
import { jobsState } from '../state/jobsState.ts';
import { reviewState } from '../state/reviewState.ts';
import { sayStage } from '../words/sayStage.ts';
import { isUnderWay, measure, openMeasuring } from './commands/measuring.ts';
import { ReviewButton } from './commands/ReviewDeskProvider.tsx';
import { CoverMarks } from './covers/CoverMarks.tsx';
import { usePointerCovers } from './covers/usePointerCovers.ts';
import { DrawBar } from './drawings/DrawBar.tsx';
import { DrawingMarks } from './drawings/DrawingMarks.tsx';
import { usePointerDrawing } from './drawings/usePointerDrawing.ts';
import { MeasureLayers } from './layers/MeasureLayers.tsx';
import { pictureScale } from './model/pictureGeometry.ts';
import { SetUpMarks } from './setUp/SetUpMarks.tsx';
import { usePointerSetUp } from './setUp/usePointerSetUp.ts';
import { PictureMenu } from './stage/PictureMenu.tsx';
import { Readout } from './stage/Readout.tsx';
import { Stage } from './stage/Stage.tsx';
import { Transport } from './stage/Transport.tsx';
import {
  coverState,
  drawingState,
  setUpState,
  stopCovering,
  stopDrawing,
  stopSettingUp,
} from './state/pictureTools.ts';
import { zoomState } from './state/viewState.ts';
import { Strip } from './strip/Strip.tsx';

type StageColumnProps = {
  readonly clip: Clip;
  readonly media: ClipMedia;
  readonly flags: readonly Flag[];
  readonly tables: ClipTables | null;
};

/** Picture, controls, times and the strip of one clip. */
export function StageColumn({ clip, media, flags, tables }: StageColumnProps) {
  const readable = tables !== null && tables.table.ticks.length > 0;
  const readOnly = reviewState((state) => state.data?.readOnly === true);
  return (
    <>
      <Stage clip={clip} media={media} tables={readable ? tables : null}>
        {readable && <PictureLayers clip={clip} media={media} table={tables.table} />}
      </Stage>
      <div className="under-stage">
        <Transport />
        {!readOnly && <MeasureButton clipId={clip.id} />}
        <PictureMenu />
      </div>
      {readable && (
        <>
          <DrawBar clip={clip} media={media} table={tables.table} />
          <Strip clip={clip} media={media} flags={flags.filter((flag) => flag.clip === clip.id)} table={tables.table} />
          <Readout clip={clip} table={tables.table} />
        </>
      )}
    </>
  );
}

type PictureLayersProps = { readonly clip: Clip; readonly media: ClipMedia; readonly table: FrameTable };

/** Covers, measures, drawings and set-up points over the picture, in the upright picture's pixels: they keep their place at any zoom. */
function PictureLayers({ clip, media, table }: PictureLayersProps) {
  const layer = useRef<SVGSVGElement>(null);
  const { width, height } = media;
  const scale = zoomState(({ stage, zoom }) => pictureScale(stage, { width, height }) * zoom.scale);
  const drawing = drawingState((state) => state.drawing);
  const tool = drawingState((state) => state.tool);
  const settingUp = setUpState((state) => state.settingUp);
  const covering = coverState((state) => state.covering);
  useEffect(
    () => () => {
      stopDrawing();
      stopSettingUp();
      stopCovering();
    },
    [],
  );
  usePointerDrawing(layer, { width, height });
  usePointerSetUp(layer, { width, height });
  usePointerCovers(layer, { width, height });
  const unit = scale > 0 ? 1 / scale : 1;
  return (
    // biome-ignore lint/a11y/useSemanticElements: an SVG holds its own coordinates, which a fieldset can't.
    <svg
      ref={layer}
      className="overlays"
      viewBox={`0 0 ${width} ${height}`}
      preserveAspectRatio="xMidYMid meet"
      role="group"
      aria-label={sayStage('onPicture')}
      data-testid="overlays"
      data-drawing-on={drawing === 'on'}
      data-tool={tool}
      data-setting-up={settingUp === 'on'}
      data-covering={covering === 'on'}
    >
      <CoverMarks media={media} />
      <MeasureLayers media={media} />
      <DrawingMarks clip={clip} table={table} unit={unit} />
      <SetUpMarks clipId={clip.id} unit={unit} />
    </svg>
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
