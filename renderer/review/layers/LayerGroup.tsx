import type { ReactNode, Ref } from 'react';

type LayerGroupProps = {
  /** What it shows, for people who can't see it. */
  readonly name: string;
  readonly testId: string;
  readonly group?: Ref<SVGGElement>;
  /** Not on screen until its place is known. */
  readonly begins?: 'lost' | 'shown';
  readonly children: ReactNode;
};

/** Strokes over the picture that a screen reader meets as one. */
export function LayerGroup({ name, testId, group, begins = 'shown', children }: LayerGroupProps) {
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of strokes is one picture to a reader.
    <g ref={group} role="img" aria-label={name} data-testid={testId} data-lost={begins === 'lost' ? '' : undefined}>
      {children}
    </g>
  );
}
