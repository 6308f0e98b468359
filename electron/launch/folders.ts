import path from 'node:path';

/** Root of the checkout: holds package.json, `migrations/` and `seeds/`. */
export const rootFolder = path.resolve(import.meta.dirname, '..', '..');

/** Where built files go. */
export const distFolder = path.join(rootFolder, 'dist');
