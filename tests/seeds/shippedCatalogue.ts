import { fileURLToPath } from 'node:url';
import { loadCatalogue } from '../../electron/backend/catalogue/loadCatalogue.ts';

/** The folder that holds `seeds/`. */
export const appFolder = fileURLToPath(new URL('../..', import.meta.url));

/** The judging data as it ships. */
export const shipped = loadCatalogue(appFolder);
