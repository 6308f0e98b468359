import type { Nearness } from '../../../engine/narration/narration.ts';
import { fit, panBy, pictureAt, pictureScale, type Size, type Zoom } from './pictureGeometry.ts';

/** What the stage shows of a picture, told by the picture alone; null for all of it. */
export function nearnessOf(zoom: Zoom, stage: Size, picture: Size): Nearness | null {
  if (zoom.scale === 1 || stage.width === 0 || stage.height === 0) return null;
  const middle = { x: (stage.width / 2 - zoom.x) / zoom.scale, y: (stage.height / 2 - zoom.y) / zoom.scale };
  return { scale: zoom.scale, ...pictureAt(middle, { left: 0, top: 0, ...stage }, picture) };
}

/** The zoom of a stage of any size that shows the same. */
export function zoomFor(near: Nearness | null, stage: Size, picture: Size): Zoom {
  if (near === null) return fit;
  const scale = pictureScale(stage, picture);
  const onStage = (at: number, whole: number, length: number): number => (at - whole / 2) * scale + length / 2;
  const zoom = {
    scale: near.scale,
    x: stage.width / 2 - onStage(near.x, picture.width, stage.width) * near.scale,
    y: stage.height / 2 - onStage(near.y, picture.height, stage.height) * near.scale,
  };
  return panBy(zoom, { x: 0, y: 0 }, stage);
}
