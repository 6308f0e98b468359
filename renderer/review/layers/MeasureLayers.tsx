import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { measuresState } from '../../state/measuresState.ts';
import { pictureScale } from '../model/pictureGeometry.ts';
import { useLayer } from '../state/layersState.ts';
import { zoomState } from '../state/viewState.ts';
import { DiscLayer } from './DiscLayer.tsx';
import { JointsLayer } from './JointsLayer.tsx';
import { PathLayer } from './PathLayer.tsx';

/** What measuring saw, over the picture in its pixels. */
export function MeasureLayers({ media }: { readonly media: ClipMedia }) {
  const { clipId, measures, recording } = measuresState();
  const scale = zoomState(({ stage, zoom }) => pictureScale(stage, media) * zoom.scale);
  const shows = { path: useLayer('path'), disc: useLayer('disc'), joints: useLayer('joints') };
  if (clipId !== media.clipId || measures === null || recording === null) return null;
  const { measurement } = measures;
  const unit = scale > 0 ? 1 / scale : 1;
  const camera = (measurement?.follows === 'point' ? recording.point : recording.disc)?.camera ?? null;
  return (
    <>
      {shows.joints && (
        <JointsLayer clipId={clipId} recording={recording} nearSide={measurement?.nearSide ?? null} unit={unit} />
      )}
      {shows.disc && <DiscLayer clipId={clipId} recording={recording} unit={unit} />}
      {shows.path && measurement !== null && measurement.follows !== 'nothing' && (
        <PathLayer clipId={clipId} measurement={measurement} camera={camera} unit={unit} />
      )}
    </>
  );
}
