import type { PageData } from '../../engine/handover/pageData.ts';

/** The data that the page was written with. */
export function readPageData(): PageData {
  return JSON.parse(document.getElementById('data')?.textContent ?? '');
}

/** The first element that a selector finds. Throws when there is none: the page and its script are written together. */
export function partOf<Found extends Element>(within: ParentNode, selector: string): Found {
  const found = within.querySelector<Found>(selector);
  if (found === null) throw new Error(`The page has no ${selector}.`);
  return found;
}
