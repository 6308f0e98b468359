import assert from 'node:assert/strict';
import type { App } from '../../harness/app.ts';
import type { Report } from '../../harness/report.ts';

/** The least that text must bear to be spaced (WCAG 1.4.12). */
const spacing = `
  * { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
  p { margin-block-end: 2em !important; }
`;

/**
 * The screen as it is now for hands and eyes that need room: targets to click (WCAG 2.5.8), spaced text, and nothing that moves.
 * The page has the checker already, and is asked for reduced motion.
 */
export function checkEase(app: App, report: Report, screen: string): Promise<void> {
  return report.check(`${screen}: room to click, for spaced text, and no motion`, async () => {
    assert.deepEqual(await app.page.evaluate(smallTargets), [], 'targets below 24 × 24');
    assert.deepEqual(await app.page.evaluate(cutOff, spacing), [], 'words cut off once they are spaced');
    assert.deepEqual(await app.page.evaluate(moving), [], 'parts that move');
  });
}

/**
 * Runs in the page: targets that are too small and too near to others. What a bar covers for now is looked at where one
 * scrolls to it. Edges and flags may stand as near as their moments do: the menu of the picture and the scorecard do the same.
 */
async function smallTargets(): Promise<string[]> {
  const axe = Reflect.get(window, 'axe') as {
    run: (within: Node, options: object) => Promise<{ violations: { nodes: { target: string[] }[] }[] }>;
  };
  const small = async (within: Node): Promise<Element[]> => {
    const runOnly = { type: 'rule', values: ['target-size'] };
    const { violations } = await axe.run(within, { iframes: false, runOnly });
    return violations
      .flatMap(({ nodes }) => nodes)
      .flatMap(({ target }) => document.querySelector(target[0] ?? '') ?? []);
  };
  const found: string[] = [];
  for (const element of await small(document)) {
    const { width, height } = element.getBoundingClientRect();
    if (element.matches('.rep-edge, .strip-flag') && width >= 24 && height >= 24) continue;
    element.scrollIntoView({ block: 'center' });
    if ((await small(element)).length > 0) found.push(element.outerHTML.slice(0, 160));
  }
  return found;
}

/** Runs in the page: words that spacing cuts off, and that neither a title nor a part to open says in full. */
function cutOff(css: string): string[] {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  document.adoptedStyleSheets.push(sheet);
  const holdsWords = (element: Element): boolean =>
    element.matches('input, button') ||
    [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim() !== '');
  const found = [...document.querySelectorAll('body *')].filter((element) => {
    // What is one pixel large is for screen readers alone, or put away until it is worked on.
    if (element.clientWidth <= 1 || (element.parentElement?.clientWidth ?? 0) <= 1) return false;
    if (!element.checkVisibility() || !holdsWords(element)) return false;
    const { overflowX, overflowY, textOverflow } = getComputedStyle(element);
    if (textOverflow === 'ellipsis' && element.closest('[title], summary') !== null) return false;
    const isCut = (overflow: string): boolean =>
      ['hidden', 'clip'].includes(overflow) || element.matches('input, button');
    return (
      (isCut(overflowX) && element.scrollWidth > element.clientWidth + 1) ||
      (isCut(overflowY) && element.scrollHeight > element.clientHeight + 1)
    );
  });
  document.adoptedStyleSheets.pop();
  return found.map((element) => element.outerHTML.slice(0, 160));
}

/** Runs in the page: what moves by itself or would on a change. */
function moving(): string[] {
  const isTimed = (seconds: string): boolean => seconds.split(',').some((one) => Number.parseFloat(one) > 0);
  return [...document.querySelectorAll('*')]
    .filter((element) => {
      const { transitionDuration, animationDuration, scrollBehavior } = getComputedStyle(element);
      return isTimed(transitionDuration) || isTimed(animationDuration) || scrollBehavior === 'smooth';
    })
    .map((element) => element.outerHTML.slice(0, 160));
}
