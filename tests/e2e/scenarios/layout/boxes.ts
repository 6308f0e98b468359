import type { App } from '../../harness/app.ts';

export type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** Parts of the review that share the window; no two of them may overlap. */
const parts = {
  head: '.screen-head',
  clips: '.clip-picker',
  stage: '[data-testid="stage"]',
  divider: '[role="separator"]',
  controls: '.under-stage',
  strip: '[data-testid="strip"]',
  times: '.under-strip',
  top: '.review-top',
  panels: '.review-panels',
  bar: '.large-bar',
  status: '.status-line',
} as const;

export type Part = keyof typeof parts;

export type Seen = {
  readonly window: { readonly width: number; readonly height: number };
  readonly parts: Readonly<Partial<Record<Part, Box>>>;
  /** The picture itself, without bars beside or above it. */
  readonly content: Box;
  readonly repBlocks: readonly Box[];
  readonly curves: Box | null;
  /** What is wider than its room, by its class. */
  readonly tooWide: readonly string[];
};

/** Where everything is on screen now, in CSS pixels. */
export function look(app: App): Promise<Seen> {
  return app.page.evaluate((selectors) => {
    const boxOf = (element: Element | null) => {
      if (element === null || !element.checkVisibility()) return null;
      const { left, top, width, height } = element.getBoundingClientRect();
      return width < 2 || height < 2 ? null : { left, top, width, height };
    };
    const video = document.querySelector('video');
    const stage = document.querySelector('[data-testid="stage"]')?.getBoundingClientRect() ?? new DOMRect();
    const [wide, high] = [video?.videoWidth ?? 0, video?.videoHeight ?? 0];
    const scale = Math.min(stage.width / wide, stage.height / high);
    const rooms =
      'main, main > *, .review-panels, .card-panel, .measures-panel, .measure-scroll, .scorecard-scroll, .under-stage';
    return {
      window: { width: window.innerWidth, height: window.innerHeight },
      parts: Object.fromEntries(
        Object.entries(selectors).flatMap(([name, selector]) => {
          const box = boxOf(document.querySelector(selector));
          return box === null ? [] : [[name, box]];
        }),
      ),
      content: {
        left: stage.left + (stage.width - wide * scale) / 2,
        top: stage.top + (stage.height - high * scale) / 2,
        width: wide * scale,
        height: high * scale,
      },
      repBlocks: [...document.querySelectorAll('.rep-block')].flatMap((block) => boxOf(block) ?? []),
      curves: boxOf(document.querySelector('[data-testid="curves-lane"]')),
      tooWide: [document.documentElement, ...document.querySelectorAll(rooms)]
        .filter((room) => room.scrollWidth > room.clientWidth + 1)
        .map((room) => room.className || room.tagName),
    };
  }, parts);
}

const overlapOf = (one: Box, other: Box): number => {
  const wide = Math.min(one.left + one.width, other.left + other.width) - Math.max(one.left, other.left);
  const high = Math.min(one.top + one.height, other.top + other.height) - Math.max(one.top, other.top);
  return Math.min(wide, high);
};

/** Pairs of parts that lie over each other by more than a pixel. */
export function overlaps({ parts: seen }: Seen): readonly string[] {
  const boxes = Object.entries(seen);
  return boxes.flatMap(([name, box], index) =>
    boxes
      .slice(index + 1)
      .flatMap(([other, otherBox]) => (overlapOf(box, otherBox) > 1 ? [`${name} over ${other}`] : [])),
  );
}
