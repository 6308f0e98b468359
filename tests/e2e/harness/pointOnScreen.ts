import type { App } from './app.ts';

/** The point on screen of a point in the picture, by the browser's own transform. */
export function pointOnScreen(app: App, x: number, y: number): Promise<{ readonly x: number; readonly y: number }> {
  return app.page.getByTestId('overlays').evaluate(
    (element, place) => {
      const matrix = (element as unknown as SVGSVGElement).getScreenCTM();
      if (matrix === null) throw new Error('the layer is not on screen');
      const point = new DOMPoint(place.x, place.y).matrixTransform(matrix);
      return { x: point.x, y: point.y };
    },
    { x, y },
  );
}
