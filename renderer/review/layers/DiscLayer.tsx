import { useRef } from 'react';
import type { Recording } from '../../../engine/recording/recording.ts';
import { usePlayhead } from '../state/playerState.ts';
import { LayerGroup } from './LayerGroup.tsx';

type DiscLayerProps = { readonly clipId: string; readonly recording: Recording; readonly unit: number };

/** The disc's rim as it was seen in the frame on screen, or a cross on the point that is followed; nothing where it was lost. */
export function DiscLayer({ clipId, recording, unit }: DiscLayerProps) {
  const rim = useRef<SVGGElement>(null);
  const cross = useRef<SVGGElement>(null);
  const { disc, point } = recording;
  usePlayhead((now) => {
    if (now.clipId !== clipId) return;
    move(rim.current, disc?.frames[now.frame] ?? null);
    move(cross.current, point?.frames[now.frame] ?? null);
  });
  const arm = 9 * unit;
  return (
    <>
      {disc !== null && (
        <LayerGroup group={rim} name="Outline of the disc" testId="disc-outline" begins="lost">
          {(['drawn-halo', 'drawn-chalk'] as const).map((stroke) => (
            <ellipse
              key={stroke}
              className={stroke}
              rx={disc.outline.radiusPx}
              ry={disc.outline.radiusPx * disc.outline.axisRatio}
              transform={`rotate(${disc.outline.majorAxisDeg})`}
              strokeWidth={(stroke === 'drawn-halo' ? 4 : 1.5) * unit}
            />
          ))}
        </LayerGroup>
      )}
      {point !== null && (
        <LayerGroup group={cross} name="The point that is followed" testId="point-mark" begins="lost">
          {(['drawn-halo', 'drawn-chalk'] as const).map((stroke) => (
            <path
              key={stroke}
              className={stroke}
              d={`M${-arm} 0H${arm}M0 ${-arm}V${arm}`}
              strokeWidth={(stroke === 'drawn-halo' ? 5 : 2) * unit}
            />
          ))}
        </LayerGroup>
      )}
    </>
  );
}

function move(mark: SVGGElement | null, at: { readonly xPx: number; readonly yPx: number } | null): void {
  mark?.toggleAttribute('data-lost', at === null);
  if (at !== null) mark?.setAttribute('transform', `translate(${at.xPx} ${at.yPx})`);
}
