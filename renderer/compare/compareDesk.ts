import { create } from 'zustand';
import { type PaneZoom, panPane, wholePane, zoomPane } from './paneZoom.ts';
import type { InStep } from './side.ts';

export type Place = 'left' | 'right';

type CompareDesk = {
  readonly inStep: InStep;
  /** Whether both pictures are zoomed and moved as one. */
  readonly together: boolean;
  readonly zoom: Readonly<Record<Place, PaneZoom>>;
  readonly mirrored: Readonly<Record<Place, boolean>>;
};

const atFirst: CompareDesk = {
  inStep: 'phase',
  together: true,
  zoom: { left: wholePane, right: wholePane },
  mirrored: { left: false, right: false },
};

/** How the two pictures are looked at. */
export const compareDesk = create<CompareDesk>()(() => atFirst);

export const resetCompareDesk = (): void => compareDesk.setState(atFirst);

function zoomed(place: Place, change: (zoom: PaneZoom) => PaneZoom): void {
  const { zoom, together } = compareDesk.getState();
  const next = change(zoom[place]);
  compareDesk.setState({ zoom: together ? { left: next, right: next } : { ...zoom, [place]: next } });
}

export const zoomAt = (place: Place, factor: number, at?: { readonly x: number; readonly y: number }): void =>
  zoomed(place, (zoom) => zoomPane(zoom, factor, at));
export const panAt = (place: Place, by: { readonly x: number; readonly y: number }): void =>
  zoomed(place, (zoom) => panPane(zoom, by));
export const showWhole = (): void => compareDesk.setState({ zoom: atFirst.zoom });
/** Joins the pictures as the left one is, or lets each go its way. */
export const joinZooms = (): void =>
  compareDesk.setState(({ together, zoom }) => ({
    together: !together,
    zoom: together ? zoom : { left: zoom.left, right: zoom.left },
  }));
export const mirror = (place: Place): void =>
  compareDesk.setState(({ mirrored }) => ({ mirrored: { ...mirrored, [place]: !mirrored[place] } }));
export const changeInStep = (): void =>
  compareDesk.setState(({ inStep }) => ({ inStep: inStep === 'phase' ? 'time' : 'phase' }));
