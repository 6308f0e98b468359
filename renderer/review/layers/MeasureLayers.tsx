import { useRef, useState } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { cameraOf } from '../../../engine/motion/camera/cameraPath.ts';
import type { Recording } from '../../../engine/recording/recording.ts';
import { measuresState } from '../../state/clipState.ts';
import { sayLayers } from '../../words/sayLayers.ts';
import { usePlayhead } from '../state/playerState.ts';
import { useLayer } from '../state/viewState.ts';
import { LayerGroup } from './LayerGroup.tsx';
import { PathLayer } from './PathLayer.tsx';
import { bodyAt, type DrawnBone, type Skeleton, skeletonOf } from './skeleton.ts';

/** What measuring saw, over the picture in its pixels. */
export function MeasureLayers({ media, unit }: { readonly media: ClipMedia; readonly unit: number }) {
  const { clipId, measures, recording } = measuresState();
  const shows = { path: useLayer('path'), disc: useLayer('disc'), joints: useLayer('joints') };
  if (clipId !== media.clipId || measures === null || recording === null) return null;
  const { measurement } = measures;
  return (
    <>
      {shows.joints && (
        <JointsLayer clipId={clipId} recording={recording} nearSide={measurement?.nearSide ?? null} unit={unit} />
      )}
      {shows.disc && <DiscLayer clipId={clipId} recording={recording} unit={unit} />}
      {shows.path && measurement !== null && measurement.follows !== 'nothing' && (
        <PathLayer clipId={clipId} measurement={measurement} camera={cameraOf(recording)} unit={unit} />
      )}
    </>
  );
}

type DiscLayerProps = { readonly clipId: string; readonly recording: Recording; readonly unit: number };

/** The disc's rim as it was seen in the frame on screen, or a cross on the point that is followed; nothing where it was lost. */
function DiscLayer({ clipId, recording, unit }: DiscLayerProps) {
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
        <LayerGroup group={rim} name={sayLayers('disc')} testId="disc-outline" begins="lost">
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
        <LayerGroup group={cross} name={sayLayers('point')} testId="point-mark" begins="lost">
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

type JointsLayerProps = {
  readonly clipId: string;
  readonly recording: Recording;
  readonly nearSide: 'left' | 'right' | null;
  readonly unit: number;
};

function skeletonAt({ disc, joints }: Recording, nearSide: 'left' | 'right' | null, frame: number): Skeleton | null {
  const body = joints === null ? null : bodyAt(joints, frame);
  if (body === null) return null;
  const sighting = disc?.frames[frame];
  const hiding = disc === null || sighting == null ? null : { at: sighting, radiusPx: disc.outline.radiusPx };
  return skeletonOf(body, nearSide, hiding);
}

const isGuess = ({ from, to }: DrawnBone): boolean => from.sight === 'guessed' || to.sight === 'guessed';

/** The lifter's near side, joint by joint: filled where it is seen, hollow and dashed where it is only guessed. */
function JointsLayer({ clipId, recording, nearSide, unit }: JointsLayerProps) {
  const [frame, setFrame] = useState(0);
  usePlayhead((now) => {
    if (now.clipId === clipId && now.frame !== frame) setFrame(now.frame);
  });
  const skeleton = skeletonAt(recording, nearSide, frame);
  if (skeleton === null) return null;
  const guessed = skeleton.joints.filter(({ sight }) => sight === 'guessed').length;
  return (
    <LayerGroup name={sayLayers('joints', { guessed, count: skeleton.joints.length })} testId="joints-layer">
      {(['drawn-halo', 'drawn-chalk'] as const).map((stroke) =>
        skeleton.bones.map((bone) => (
          <line
            key={`${stroke}-${bone.from.name}-${bone.to.name}`}
            className={stroke}
            x1={bone.from.at.xPx}
            y1={bone.from.at.yPx}
            x2={bone.to.at.xPx}
            y2={bone.to.at.yPx}
            strokeWidth={(stroke === 'drawn-halo' ? 5 : 2) * unit}
            strokeDasharray={isGuess(bone) ? `${2 * unit} ${5 * unit}` : undefined}
          />
        )),
      )}
      {skeleton.joints.map(({ name, at, sight }) => (
        <circle
          key={name}
          className="layer-joint"
          data-sight={sight}
          cx={at.xPx}
          cy={at.yPx}
          r={4 * unit}
          strokeWidth={(sight === 'guessed' ? 1.5 : 2) * unit}
        />
      ))}
    </LayerGroup>
  );
}
