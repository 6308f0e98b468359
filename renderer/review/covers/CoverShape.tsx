import type { Box, CoverLook } from '../../../engine/covers/cover.ts';

type CoverShapeProps = {
  /** Tells this cover's pattern from others'. */
  readonly id: string;
  readonly box: Box;
  readonly look: CoverLook;
  /** Picture pixels that one pixel of the screen covers. */
  readonly unit: number;
};

/** Squares along the longer side of a mosaic, as in what is handed over. */
const squaresAlong = 4;
const tones = ['a', 'b', 'c', 'd'] as const;

/** A cover as it will look: a dark box, or large squares; its rim is for the coach alone. */
export function CoverShape({ id, box, look, unit }: CoverShapeProps) {
  const edges = { x: box.leftPx, y: box.topPx, width: box.widthPx, height: box.heightPx };
  const square = Math.max(box.widthPx, box.heightPx) / squaresAlong;
  const pattern = `cover-${id}`;
  return (
    <>
      {look === 'mosaic' && (
        <defs>
          <pattern
            id={pattern}
            patternUnits="userSpaceOnUse"
            x={box.leftPx}
            y={box.topPx}
            width={2 * square}
            height={2 * square}
          >
            {tones.map((tone, index) => (
              <rect
                key={tone}
                className="cover-square"
                data-tone={tone}
                x={(index % 2) * square}
                y={Math.floor(index / 2) * square}
                width={square}
                height={square}
              />
            ))}
          </pattern>
        </defs>
      )}
      <rect className="cover-body" data-look={look} fill={`url(#${pattern})`} {...edges} />
      <rect className="cover-rim" {...edges} strokeWidth={1.5 * unit} />
    </>
  );
}
