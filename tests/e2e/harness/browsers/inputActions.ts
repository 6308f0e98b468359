import type { Key } from './pageInBrowser.ts';

/** Keys as WebDriver calls them (W3C, https://www.w3.org/TR/webdriver2/#keyboard-actions). */
const values: Readonly<Record<Key, string>> = { Tab: '\uE004', Space: ' ', n: 'n', b: 'b' };

/** A key pressed and let go, as actions of a key source. */
export const keyStrokes = (key: Key): readonly object[] => [
  { type: 'keyDown', value: values[key] },
  { type: 'keyUp', value: values[key] },
];

/** A click at a place of the viewport, as actions of a pointer source. */
export const clickAt = (x: number, y: number): readonly object[] => [
  { type: 'pointerMove', x, y },
  { type: 'pointerDown', button: 0 },
  { type: 'pointerUp', button: 0 },
];

/** Runs in the page: brings an element into view and gives its middle. */
export function middleOf({ selector, place }: { selector: string; place: number }): { x: number; y: number } {
  const element = document.querySelectorAll(selector)[place];
  if (element === undefined) throw new Error(`There is no ${selector} number ${place}.`);
  element.scrollIntoView({ block: 'center', behavior: 'instant' });
  const { left, top, width, height } = element.getBoundingClientRect();
  return { x: Math.round(left + width / 2), y: Math.round(top + height / 2) };
}
