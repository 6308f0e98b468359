import { create } from 'zustand';
import { fit, type Point, panBy, type Size, type Zoom, zoomAt } from '../model/pictureGeometry.ts';

type ZoomState = {
  readonly zoom: Zoom;
  readonly stage: Size;
  readonly setStage: (stage: Size) => void;
  /** At a point of the stage; in its middle without one. */
  readonly zoomBy: (factor: number, at?: Point) => void;
  readonly pan: (by: Point) => void;
  readonly fit: () => void;
};

/** Zoom and place of the picture on the stage; stays from clip to clip, so that the same spot can be compared. */
export const zoomState = create<ZoomState>()((set) => ({
  zoom: fit,
  stage: { width: 0, height: 0 },
  setStage: (stage) => set(({ zoom }) => ({ stage, zoom: panBy(zoom, { x: 0, y: 0 }, stage) })),
  zoomBy: (factor, at) =>
    set(({ zoom, stage }) => ({
      zoom: zoomAt(zoom, at ?? { x: stage.width / 2, y: stage.height / 2 }, factor, stage),
    })),
  pan: (by) => set(({ zoom, stage }) => ({ zoom: panBy(zoom, by, stage) })),
  fit: () => set({ zoom: fit }),
}));
