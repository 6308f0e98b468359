import { useEffect, useRef } from 'react';
import { useShallow } from 'zustand/react/shallow';
import type { ClipMedia } from '../../electron/contract/clips.ts';
import { seenPart, seenSize } from '../../engine/framing/picturePlaces.ts';
import type { Clip } from '../../engine/review/review.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';
import type { ClipTables } from '../state/clipState.ts';
import { sayStage } from '../words/sayStage.ts';
import { CoverMarks } from './covers/CoverMarks.tsx';
import { usePointerCovers } from './covers/usePointerCovers.ts';
import { DrawingMarks } from './drawings/DrawingMarks.tsx';
import { NarratedShapes } from './drawings/NarratedShapes.tsx';
import { usePointerDrawing } from './drawings/usePointerDrawing.ts';
import { CropMark } from './framing/CropMark.tsx';
import { usePointerCrop } from './framing/usePointerCrop.ts';
import { MeasureLayers } from './layers/MeasureLayers.tsx';
import { pictureScale } from './model/pictureGeometry.ts';
import { shownFraming } from './model/shownFraming.ts';
import { SetUpMarks } from './setUp/SetUpMarks.tsx';
import { usePointerSetUp } from './setUp/usePointerSetUp.ts';
import { Stage } from './stage/Stage.tsx';
import { framingState, stopFraming } from './state/framingState.ts';
import { narrationState } from './state/narrationState.ts';
import {
  coverState,
  drawingState,
  setUpState,
  stopCovering,
  stopDrawing,
  stopSettingUp,
} from './state/pictureTools.ts';
import { zoomState } from './state/viewState.ts';

type ClipStageProps = { readonly clip: Clip; readonly media: ClipMedia; readonly tables: ClipTables | null };

/** The picture of one clip, with everything that lies over it. */
export function ClipStage({ clip, media, tables }: ClipStageProps) {
  const readable = tables !== null && tables.table.ticks.length > 0;
  return (
    <Stage clip={clip} media={media} tables={readable ? tables : null}>
      {readable && <PictureLayers clip={clip} media={media} table={tables.table} />}
    </Stage>
  );
}

type PictureLayersProps = { readonly clip: Clip; readonly media: ClipMedia; readonly table: FrameTable };

/** Covers, measures, drawings and set-up points over the picture, in the upright picture's pixels: they keep their place at any zoom. */
function PictureLayers({ clip, media, table }: PictureLayersProps) {
  const layer = useRef<SVGSVGElement>(null);
  const { width, height } = media;
  const framing = framingState(useShallow((now) => shownFraming(clip, now)));
  const { mirrored } = framing;
  const seen = seenSize(seenPart(media, framing));
  const scale = zoomState(({ stage, zoom }) => pictureScale(stage, seen) * zoom.scale);
  const isFraming = framingState((state) => state.framing === 'on');
  const drawing = drawingState((state) => state.drawing);
  const tool = drawingState((state) => state.tool);
  const settingUp = setUpState((state) => state.settingUp);
  const covering = coverState((state) => state.covering);
  const heard = narrationState((state) => state.drawn);
  useEffect(
    () => () => {
      stopDrawing();
      stopSettingUp();
      stopCovering();
      stopFraming();
    },
    [],
  );
  usePointerDrawing(layer, { width, height, mirrored });
  usePointerSetUp(layer, { width, height, mirrored });
  usePointerCovers(layer, { width, height, mirrored });
  usePointerCrop(layer, { width, height, mirrored });
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
      data-framing={isFraming}
    >
      <CoverMarks media={media} unit={unit} />
      <MeasureLayers media={media} unit={unit} />
      {heard === null ? (
        <DrawingMarks clip={clip} table={table} unit={unit} />
      ) : (
        <NarratedShapes shapes={heard} unit={unit} />
      )}
      <SetUpMarks clipId={clip.id} unit={unit} />
      <CropMark clip={clip} media={media} unit={unit} />
    </svg>
  );
}
