import { type SeenPart, seenPoint, seenSize, uprightPoint } from '../../../engine/framing/picturePlaces.ts';
import type { Nearness } from '../../../engine/narration/narration.ts';
import { fit, panBy, pictureAt, pictureScale, type Size, type Zoom } from './pictureGeometry.ts';

/** What the stage shows of the part that is seen of a picture, told in the upright picture's pixels; null for all of it. */
export function nearnessOf(zoom: Zoom, stage: Size, part: SeenPart): Nearness | null {
  if (zoom.scale === 1 || stage.width === 0 || stage.height === 0) return null;
  const middle = { x: (stage.width / 2 - zoom.x) / zoom.scale, y: (stage.height / 2 - zoom.y) / zoom.scale };
  const seen = pictureAt(middle, { left: 0, top: 0, ...stage }, seenSize(part));
  return { scale: zoom.scale, ...uprightPoint(part, seen) };
}

/** The zoom of a stage of any size that shows the same. */
export function zoomFor(near: Nearness | null, stage: Size, part: SeenPart): Zoom {
  if (near === null) return fit;
  const whole = seenSize(part);
  const at = seenPoint(part, near);
  const scale = pictureScale(stage, whole);
  const onStage = (place: number, side: number, length: number): number => (place - side / 2) * scale + length / 2;
  const zoom = {
    scale: near.scale,
    x: stage.width / 2 - onStage(at.x, whole.width, stage.width) * near.scale,
    y: stage.height / 2 - onStage(at.y, whole.height, stage.height) * near.scale,
  };
  return panBy(zoom, { x: 0, y: 0 }, stage);
}
