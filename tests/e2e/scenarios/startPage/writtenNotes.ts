import { readFile } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';

/** A remark as a handover's files for other programs tell it. */
export type NoteOfClip = { readonly id: string; readonly clip: string; readonly atS: number };

const annotationsSchema = v.object({
  items: v.array(
    v.object({
      id: v.string(),
      target: v.object({ source: v.string(), selector: v.object({ value: v.string() }) }),
    }),
  ),
});

const sheetSchema = v.object({
  flags: v.array(
    v.object({ id: v.string(), atS: v.number(), criterionName: v.string(), note: v.string(), cue: v.string() }),
  ),
});
export type FlagOfSheet = v.InferOutput<typeof sheetSchema>['flags'][number];

const readJson = async (...parts: readonly string[]): Promise<unknown> =>
  JSON.parse(await readFile(path.join(...parts), 'utf8'));

/** Remarks in the order of their times in the clips of the folder (W3C Web Annotation, media fragments). */
export async function notesOfFolder(folder: string): Promise<readonly NoteOfClip[]> {
  const { items } = v.parse(annotationsSchema, await readJson(folder, 'annotations.jsonld'));
  return items
    .map(({ id, target }) => ({
      id: id.split('/').at(-1) ?? '',
      clip: target.source,
      atS: Number(/^t=([\d.]+)/.exec(target.selector.value)?.[1]),
    }))
    .sort((one, other) => one.atS - other.atS);
}

/** The remarks of the folder's sheet. */
export async function flagsOfSheet(folder: string): Promise<readonly FlagOfSheet[]> {
  return v.parse(sheetSchema, await readJson(folder, 'sheet.json')).flags;
}

/** Times of the remarks in the footage, by the remark's id. */
export async function sheetTimes(folder: string): Promise<ReadonlyMap<string, number>> {
  return new Map((await flagsOfSheet(folder)).map(({ id, atS }) => [id, atS]));
}
