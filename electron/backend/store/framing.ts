import * as v from 'valibot';
import { asFilmed, cropSchema, type Framing, isAsFilmed, type TurnDeg } from '../../../engine/framing/framing.ts';
import { lookKey } from '../../../engine/framing/lookKey.ts';
import { turnedSize } from '../../../engine/framing/picturePlaces.ts';
import type { Section } from '../../../engine/framing/section.ts';
import type { Row } from './changes.ts';
import type { FootageRow } from './footage.ts';

/** The columns of how a clip's picture is shown, and of which stretch of its footage. */
export type FramingColumns = {
  readonly turn_deg: TurnDeg;
  readonly mirrored: number;
  readonly crop: string | null;
  readonly brightness: number;
  readonly section_from_frame: number | null;
  readonly section_from_ticks: number | null;
  readonly section_to_frame: number | null;
  readonly section_to_ticks: number | null;
};

/** How the picture of a row is shown. */
export function framingOf({ turn_deg, mirrored, crop, brightness }: FramingColumns): Framing {
  return {
    turnDeg: turn_deg,
    mirrored: mirrored === 1,
    crop: crop === null ? null : v.parse(cropSchema, JSON.parse(crop)),
    brightness,
  };
}

/** The columns of how a picture is shown; as filmed without it. */
export function framingColumns({ turnDeg, mirrored, crop, brightness }: Framing = asFilmed): Row {
  return { turn_deg: turnDeg, mirrored: mirrored ? 1 : 0, crop: crop && JSON.stringify(crop), brightness };
}

/** The stretch of its footage that a row shows; null = all of it. */
export function sectionOf(row: FramingColumns): Section | null {
  const { section_from_frame, section_from_ticks, section_to_frame, section_to_ticks } = row;
  if (section_from_frame === null || section_from_ticks === null) return null;
  if (section_to_frame === null || section_to_ticks === null) return null;
  return {
    from: { frame: section_from_frame, ticks: section_from_ticks },
    to: { frame: section_to_frame, ticks: section_to_ticks },
  };
}

/** The columns of a stretch of footage; null or undefined = all of it. */
export function sectionColumns(section: Section | null | undefined): Row {
  return {
    section_from_frame: section?.from.frame ?? null,
    section_from_ticks: section?.from.ticks ?? null,
    section_to_frame: section?.to.frame ?? null,
    section_to_ticks: section?.to.ticks ?? null,
  };
}

/** Framing and section of a row as the review format has them. */
export function framingOfRow(row: FramingColumns): { framing?: Framing; section?: Section } {
  const [framing, section] = [framingOf(row), sectionOf(row)];
  return { ...(!isAsFilmed(framing) && { framing }), ...(section && { section }) };
}

/** What tells pictures of a row apart from others of its footage. */
export const lookOfRow = (row: FramingColumns): string => lookKey(framingOfRow(row));

/** The upright picture of footage as a clip shows it: its size, and the turn that comes on top of what the file says. */
export function uprightOf(
  { shown_width: width, shown_height: height }: Pick<FootageRow, 'shown_width' | 'shown_height'>,
  { turn_deg: turnDeg }: Pick<FramingColumns, 'turn_deg'>,
) {
  return { ...turnedSize({ width, height }, turnDeg), ...(turnDeg !== 0 && { turnDeg }) };
}
