import type { ReactNode } from 'react';
import { asFilmed, type Framing } from '../../engine/framing/framing.ts';
import { seenPart, seenSize, turnedSize } from '../../engine/framing/picturePlaces.ts';

type FramedPictureProps = {
  /** Size of the upright picture. */
  readonly upright: { readonly width: number; readonly height: number };
  readonly framing: Framing | undefined;
  /** What shows the footage as the file has it. */
  readonly footage: ReactNode;
  /** What lies over the upright picture, in its pixels. */
  readonly children?: ReactNode;
};

const percent = (share: number): string => `${share * 100}%`;

/** A picture turned, cut, mirrored and lit as a clip is framed, as large as its place allows; what lies over it moves along. */
export function FramedPicture({ upright, framing = asFilmed, footage, children }: FramedPictureProps) {
  const known = upright.width > 0 && upright.height > 0 ? upright : { width: 16, height: 9 };
  const { turnDeg, mirrored, brightness } = framing;
  const part = seenPart(known, framing);
  const seen = seenSize(part);
  const asHeld = turnedSize(known, turnDeg);
  return (
    <div
      className="framed-window"
      data-mirrored={mirrored}
      data-testid="framed-window"
      style={{
        aspectRatio: `${seen.width} / ${seen.height}`,
        width: `min(100cqw, calc(100cqh * ${seen.width / seen.height}))`,
      }}
    >
      <div
        className="framed-upright"
        style={{
          left: percent(-part.left / seen.width),
          top: percent(-part.top / seen.height),
          width: percent(known.width / seen.width),
          height: percent(known.height / seen.height),
        }}
      >
        <div
          className="framed-footage"
          style={{
            width: percent(asHeld.width / known.width),
            height: percent(asHeld.height / known.height),
            transform: `translate(-50%, -50%) rotate(${turnDeg}deg)`,
            ...(brightness !== 1 && { filter: `brightness(${brightness})` }),
          }}
        >
          {footage}
        </div>
        {children}
      </div>
    </div>
  );
}
