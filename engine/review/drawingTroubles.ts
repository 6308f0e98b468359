import { compareMoments } from './moments.ts';
import { momentTrouble } from './momentTroubles.ts';
import type { Trouble } from './plainData.ts';
import type { Clip } from './review.ts';

/** Drawings that show outside of their clip or end before they begin, and plumbs that aren't vertical. */
export function* drawingTroubles(clip: Clip, clipPlace: string): Generator<Trouble> {
  for (const [i, drawing] of (clip.drawings ?? []).entries()) {
    const place = `${clipPlace}.drawings[${i}]`;
    for (const name of ['from', 'to'] as const) {
      const outside = momentTrouble(drawing[name], clip, `${place}.${name}`);
      if (outside !== null) yield outside;
    }
    const order = compareMoments(drawing.from, drawing.to, clip);
    if (order !== null && order > 0) yield { place, what: 'ends before it begins: put its moments in order' };
    if (drawing.shape === 'plumb' && drawing.points[0].x !== drawing.points[1].x) {
      yield { place, what: 'is a plumb that isn’t vertical: give both points the same x, or make it a line' };
    }
  }
}
