/** How close a picture is seen: a point p of the pane, in shares of its sides, is seen at p × scale + offset. */
export type PaneZoom = { readonly scale: number; readonly x: number; readonly y: number };

type Share = { readonly x: number; readonly y: number };

export const wholePane: PaneZoom = { scale: 1, x: 0, y: 0 };

const most = 16;
const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** Keeps the pane covered: the picture's edge is never drawn inside it. */
const covering = ({ scale, x, y }: PaneZoom): PaneZoom => ({
  scale,
  x: clamp(x, 1 - scale, 0),
  y: clamp(y, 1 - scale, 0),
});

/** Zooms so that what lies at a point of the pane stays there; in its middle without one. */
export function zoomPane(zoom: PaneZoom, factor: number, at: Share = { x: 0.5, y: 0.5 }): PaneZoom {
  const scale = clamp(zoom.scale * factor, 1, most);
  const grown = scale / zoom.scale;
  return covering({ scale, x: at.x - (at.x - zoom.x) * grown, y: at.y - (at.y - zoom.y) * grown });
}

/** Moves the picture under the pane. */
export const panPane = (zoom: PaneZoom, by: Share): PaneZoom =>
  covering({ ...zoom, x: zoom.x + by.x, y: zoom.y + by.y });

/** The transform that shows it, for an element as large as the pane whose origin is its corner. */
export const transformOf = ({ scale, x, y }: PaneZoom): string => `translate(${x * 100}%, ${y * 100}%) scale(${scale})`;
