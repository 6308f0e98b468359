import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { mayBeShipped, productionPackages } from './productionPackages.ts';
import { thirdPartyNotices } from './thirdParty.ts';

const appFolder = path.resolve(import.meta.dirname, '../..');
const refused = productionPackages(appFolder).filter((one) => !mayBeShipped(one));
if (refused.length > 0) {
  const list = refused.map(({ name, licence }) => `${name} (${licence === '' ? 'none stated' : licence})`).join(', ');
  process.stderr.write(`Not to be shipped under these licences, so nothing was written: ${list}\n`);
  process.exitCode = 1;
} else {
  const file = path.join(import.meta.dirname, 'THIRD-PARTY.md');
  writeFileSync(file, thirdPartyNotices(appFolder));
  process.stderr.write(`Written: ${file}\n`);
}
