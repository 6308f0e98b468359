import { buildChanged } from './buildChanged.ts';

const built = await buildChanged();
process.stderr.write(built.length === 0 ? 'Everything is built already\n' : `Built: ${built.join(', ')}\n`);
