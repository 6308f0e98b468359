import { existsSync } from 'node:fs';
import path from 'node:path';

/** The folder of the application above some code of it: holds `seeds/` and `migrations/`, in a checkout as in a package. */
export function appFolderAbove(folder: string): string {
  for (let above = folder; ; above = path.dirname(above)) {
    if (existsSync(path.join(above, 'migrations'))) return above;
    if (above === path.dirname(above)) throw new Error('this program lies outside of its application');
  }
}
