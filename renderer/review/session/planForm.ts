import * as v from 'valibot';
import { kgOfLoad, kgPerLb, type LoadUnits, loadIn } from '../../../engine/review/load.ts';
import {
  equalPlanSchema,
  type Plan,
  type PlannedSet,
  plannedSetSchema,
  runsOfSets,
} from '../../../engine/review/plan.ts';
import { plain } from '../../base/figures.ts';
import { sayPlan } from '../../words/sayPlan.ts';

/** The fields of one set as they are typed. */
export type SetFields = {
  readonly reps: string;
  readonly load: string;
  readonly bodyWeight: boolean;
  readonly tempo: string;
  readonly repsInReserve: string;
  /** The load that `load` was written from: kept to the gram while the text is not changed. */
  readonly fromKg?: number;
};

/** What is typed into the form of a plan: sets that are all alike, or each in a row of its own. */
export type PlanForm =
  | { readonly kind: 'alike'; readonly sets: string; readonly set: SetFields }
  | { readonly kind: 'listed'; readonly rows: readonly SetFields[] };

export type PlanField = 'sets' | keyof Omit<SetFields, 'bodyWeight' | 'fromKg'>;

/** What is wrong with a form: the field, its row among listed sets, and a sentence for people. */
export type PlanTrouble = { readonly row: number | null; readonly field: PlanField; readonly sentence: string };

export const mostSets = 50;

const emptySet: SetFields = { reps: '', load: '', bodyWeight: false, tempo: '', repsInReserve: '' };

const isEmpty = ({ reps, load, bodyWeight, tempo, repsInReserve }: SetFields): boolean =>
  !bodyWeight && [reps, load, tempo, repsInReserve].every((text) => text.trim() === '');

const shownLoad = (kg: number, units: LoadUnits): string => String(Math.round(loadIn(units, kg) * 100) / 100);

function fieldsOfSet({ reps, loadKg, tempo, repsInReserve }: PlannedSet, units: LoadUnits): SetFields {
  return {
    reps: String(reps),
    ...(loadKg === undefined || loadKg === 0
      ? { load: '', bodyWeight: loadKg === 0 }
      : { load: shownLoad(loadKg, units), bodyWeight: false, fromKg: loadKg }),
    tempo: tempo ?? '',
    repsInReserve: repsInReserve === undefined ? '' : String(repsInReserve),
  };
}

/** A plan as a form: equal sets as one, others row by row; without a plan, an empty form for equal sets. */
export function formOfPlan(plan: Plan | undefined, units: LoadUnits): PlanForm {
  if (plan === undefined) return { kind: 'alike', sets: '', set: emptySet };
  const [run, ...others] = runsOfSets(plan);
  return run !== undefined && others.length === 0
    ? { kind: 'alike', sets: String(run.count), set: fieldsOfSet(run.set, units) }
    : { kind: 'listed', rows: plan.sets.map((set) => fieldsOfSet(set, units)) };
}

const figure = (text: string): number => Number(text.trim().replace(',', '.'));

/** The form with a row for each set. */
export function asRows(form: PlanForm): PlanForm {
  if (form.kind === 'listed') return form;
  const sets = figure(form.sets);
  const count = Number.isInteger(sets) ? Math.min(mostSets, Math.max(1, sets)) : 1;
  return { kind: 'listed', rows: Array.from({ length: count }, () => form.set) };
}

/** The form with all sets like the first. */
export function asAlike(form: PlanForm): PlanForm {
  if (form.kind === 'alike') return form;
  const [first = emptySet] = form.rows;
  return { kind: 'alike', sets: form.rows.length === 0 ? '' : String(form.rows.length), set: first };
}

function loadKgOf({ load, bodyWeight, fromKg }: SetFields, units: LoadUnits): number | undefined {
  if (bodyWeight) return 0;
  if (load.trim() === '') return undefined;
  if (fromKg !== undefined && load === shownLoad(fromKg, units)) return fromKg;
  return kgOfLoad(figure(load), units);
}

/** A set as the schema takes it; a field that is empty is left out. */
function givenSet(set: SetFields, units: LoadUnits): Record<string, unknown> {
  const given = {
    reps: set.reps.trim() === '' ? undefined : figure(set.reps),
    loadKg: loadKgOf(set, units),
    tempo: set.tempo.trim() === '' ? undefined : set.tempo.trim().toUpperCase(),
    repsInReserve: set.repsInReserve.trim() === '' ? undefined : figure(set.repsInReserve),
  };
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
}

const fieldOfKey: Readonly<Record<string, PlanField>> = {
  sets: 'sets',
  reps: 'reps',
  loadKg: 'load',
  tempo: 'tempo',
  repsInReserve: 'repsInReserve',
};

const mostKg = 1000;

function ruleOf(field: PlanField, units: LoadUnits): string {
  switch (field) {
    case 'sets':
      return sayPlan('setsRule', { most: mostSets });
    case 'reps':
      return sayPlan('repsRule');
    case 'load':
      return sayPlan('loadRule', { most: plain(units === 'kg' ? mostKg : Math.floor(mostKg / kgPerLb)), units });
    case 'tempo':
      return sayPlan('tempoRule');
    case 'repsInReserve':
      return sayPlan('repsInReserveRule');
  }
}

function trouble(key: unknown, row: number | null, units: LoadUnits): { readonly wrong: PlanTrouble } {
  const field = fieldOfKey[String(key)] ?? 'reps';
  const rule = ruleOf(field, units);
  const sentence = row === null ? sayPlan('wrong', { rule }) : sayPlan('wrongInSet', { set: row + 1, rule });
  return { wrong: { row, field, sentence } };
}

/** The plan of a filled-in form; null when all of it is empty; or the first thing that is wrong with it. */
export function planOfForm(
  form: PlanForm,
  units: LoadUnits,
): { readonly plan: Plan | null } | { readonly wrong: PlanTrouble } {
  if (form.kind === 'alike') {
    if (form.sets.trim() === '' && isEmpty(form.set)) return { plan: null };
    const sets = form.sets.trim() === '' ? undefined : figure(form.sets);
    const parsed = v.safeParse(equalPlanSchema, { ...(sets !== undefined && { sets }), ...givenSet(form.set, units) });
    if (!parsed.success) return trouble(parsed.issues[0].path?.[0]?.key, null, units);
    const { sets: count, ...set } = parsed.output;
    return { plan: { sets: Array.from({ length: count }, () => ({ ...set })) } };
  }
  if (form.rows.every(isEmpty)) return { plan: null };
  const sets: PlannedSet[] = [];
  for (const [row, fields] of form.rows.entries()) {
    const parsed = v.safeParse(plannedSetSchema, givenSet(fields, units));
    if (!parsed.success) return trouble(parsed.issues[0].path?.[0]?.key, row, units);
    sets.push(parsed.output);
  }
  return { plan: { sets } };
}
