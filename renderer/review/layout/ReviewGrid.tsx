import type { CSSProperties, ReactNode } from 'react';
import { layoutState, type PictureShape } from '../state/layoutState.ts';

type ReviewGridProps = {
  readonly shape: PictureShape;
  /** Width of the picture divided by its height. */
  readonly aspect: number;
  readonly large: boolean;
  readonly children: ReactNode;
};

/** The review's page, divided between the picture and what stands beside it; renders nothing inside anew while it is divided otherwise. */
export function ReviewGrid({ shape, aspect, large, children }: ReviewGridProps) {
  const share = layoutState((state) => state.shares[shape]);
  const measures = { '--aspect': aspect, ...(share !== null && { '--share': share }) } as CSSProperties;
  return (
    <main
      className="review"
      data-shape={shape}
      data-large={large}
      data-divided={share === null ? 'byItself' : 'byHand'}
      style={measures}
    >
      {children}
    </main>
  );
}
