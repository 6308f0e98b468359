import { asFilmed, type Framing } from './framing.ts';
import type { Section } from './section.ts';

type Shown = { readonly framing?: Framing | undefined; readonly section?: Section | null | undefined };

/**
 * What tells pictures of one clip's footage apart by how it is shown: '' for all of it as filmed, else a name like
 * "turned90-mirrored-crop10.20.320.240-light1.5-frames40.120" that fits addresses and files.
 */
export function lookKey({ framing = asFilmed, section }: Shown): string {
  const { turnDeg, mirrored, crop, brightness } = framing;
  const parts = [
    ...(turnDeg === 0 ? [] : [`turned${turnDeg}`]),
    ...(mirrored ? ['mirrored'] : []),
    ...(crop === null ? [] : [`crop${crop.leftPx}.${crop.topPx}.${crop.widthPx}.${crop.heightPx}`]),
    ...(brightness === 1 ? [] : [`light${brightness}`]),
    ...(section ? [`frames${section.from.frame}.${section.to.frame}`] : []),
  ];
  return parts.join('-');
}
