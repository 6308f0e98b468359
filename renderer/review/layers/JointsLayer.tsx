import { useState } from 'react';
import type { Recording } from '../../../engine/recording/recording.ts';
import { usePlayhead } from '../state/playerState.ts';
import { LayerGroup } from './LayerGroup.tsx';
import { bodyAt, type DrawnBone, type Skeleton, skeletonOf } from './skeleton.ts';

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
export function JointsLayer({ clipId, recording, nearSide, unit }: JointsLayerProps) {
  const [frame, setFrame] = useState(0);
  usePlayhead((now) => {
    if (now.clipId === clipId && now.frame !== frame) setFrame(now.frame);
  });
  const skeleton = skeletonAt(recording, nearSide, frame);
  if (skeleton === null) return null;
  const guessed = skeleton.joints.filter(({ sight }) => sight === 'guessed').length;
  return (
    <LayerGroup
      name={`Joints of the lifter’s near side, ${guessed} of ${skeleton.joints.length} guessed`}
      testId="joints-layer"
    >
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
