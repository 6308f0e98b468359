import path from 'node:path';
import { loadCatalogue } from '../../electron/backend/catalogue/loadCatalogue.ts';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';

/** The folder that holds `seeds/`. */
export const appFolder = path.resolve(import.meta.dirname, '../..');

/** The judging data as it ships, under a version of the rubric. */
export const shippedUnder = (version: number): Catalogue => loadCatalogue(appFolder, version);

/** The judging data as it ships, under the first version of the rubric. */
export const shipped = shippedUnder(1);
