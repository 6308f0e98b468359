import * as v from 'valibot';
import { type Equipment, equipmentSchema } from '../../../engine/exercises/equipment.ts';
import type { Override } from '../../../engine/review/review.ts';
import type { Moment } from '../../../engine/time/moment.ts';
import type { Row } from './changes.ts';

/** The moments a row can hold; each is three columns: `start_frame`, `start_ticks`, `start_seconds`. */
export type MomentName = 'start' | 'stretched_end' | 'end' | 'at' | 'from' | 'to';

/** The columns of a moment; all null when there is none. */
export function momentColumns(name: MomentName, moment: Moment | undefined): Row {
  const exact = moment && 'frame' in moment ? moment : undefined;
  const rough = moment && 'seconds' in moment ? moment : undefined;
  return {
    [`${name}_frame`]: exact?.frame ?? null,
    [`${name}_ticks`]: exact?.ticks ?? null,
    [`${name}_seconds`]: rough?.seconds ?? null,
  };
}

/** The moment that a row's columns hold, or undefined. */
export function momentOf(row: Row, name: MomentName): Moment | undefined {
  const frame = row[`${name}_frame`];
  const ticks = row[`${name}_ticks`];
  const seconds = row[`${name}_seconds`];
  if (typeof frame === 'number' && typeof ticks === 'number') return { frame, ticks };
  return typeof seconds === 'number' ? { seconds } : undefined;
}

/** The frame of a moment that a row holds, or undefined. */
export function frameOf(row: Row, name: MomentName): number | undefined {
  const frame = row[`${name}_frame`];
  return typeof frame === 'number' ? frame : undefined;
}

/** The columns of a grade set by hand; both null where the arithmetic's grade counts. */
export type OverrideColumns = { readonly override_score: number | null; readonly override_reason: string | null };

/** The columns of a grade set by hand; null or undefined for none. */
export function overrideColumns(override: Override | null | undefined): Row & OverrideColumns {
  return { override_score: override?.score ?? null, override_reason: override?.reason ?? null };
}

/** The grade set by hand that a row holds, as the review format has it. */
export function overrideOf({ override_score, override_reason }: OverrideColumns): { override?: Override } {
  if (override_score === null || override_reason === null) return {};
  return { override: { score: override_score, reason: override_reason } };
}

/** The column of what there is to train with; null for none. */
export type EquipmentColumn = { readonly equipment: string | null };

/** The column of what there is to train with; null or undefined for none. */
export function equipmentColumn(equipment: Equipment | null | undefined): EquipmentColumn {
  return { equipment: equipment ? JSON.stringify(equipment) : null };
}

/** What there is to train with by a row, as the review format has it. */
export function equipmentOfRow({ equipment }: EquipmentColumn): { equipment?: Equipment } {
  return equipment === null ? {} : { equipment: v.parse(equipmentSchema, JSON.parse(equipment)) };
}
