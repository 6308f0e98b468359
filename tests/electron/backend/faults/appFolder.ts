import path from 'node:path';

/** The repository, for the scripts that tests run as processes of their own. */
export const appFolder = path.resolve(import.meta.dirname, '../../../..');
