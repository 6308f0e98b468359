import type { SearchDepth } from './people.ts';

/** How looks follow each other through a clip, by how many of them a second has. */
export type Pace = {
  /**
   * A look is guided by the body found so many looks earlier, so that as many can run side by side. It is the same for any
   * number of threads, and so is the result.
   */
  readonly looksAside: number;
  /** While the lifter is lost, every so many looks searches the picture; those between are left out. */
  readonly looksBetweenSearches: number;
  /** Every so many looks, everybody in the picture is looked for. */
  readonly looksBetweenRounds: number;
};

const mostAside = 4;
/** A guide is no older than this where looks are frequent enough. */
const guideWithinS = 0.14;
const searchesInASecond = 5;
/** Reps take two seconds and more: so often is enough to see who goes up and down. */
const roundEveryS = 0.7;

export function paceOf(looksPerSecond: number): Pace {
  return {
    looksAside: Math.min(mostAside, Math.max(1, Math.floor(guideWithinS * looksPerSecond))),
    looksBetweenSearches: Math.max(1, Math.round(looksPerSecond / searchesInASecond)),
    looksBetweenRounds: Math.max(1, Math.round(roundEveryS * looksPerSecond)),
  };
}

/** How deep the search number so and so goes: squares of the picture take six times as long as the whole, small ones thirty times. */
export function depthOfSearch(search: number): SearchDepth {
  if (search % 25 === 0) return 'smallSquares';
  return search % 5 === 0 ? 'squares' : 'whole';
}
