import { gunzipSync } from 'node:zlib';
import * as v from 'valibot';
import { type Warning, type WarningId, warningSchema } from '../../../engine/recording/warnings.ts';
import { all, first, run, type Writing } from './connection.ts';

/**
 * The sentences that a recording's warnings were stored as up to the sixth shape of the library, as they were written
 * then. They never change again: what is said today stands in `engine/wording`.
 */
const sentences: readonly { readonly id: WarningId; readonly sentence: RegExp }[] = [
  { id: 'cameraMoves', sentence: /^The camera moves and the background shows too little to take that out/ },
  { id: 'noDisc', sentence: /^No disc was found that moves with the lifter/ },
  { id: 'discLost', sentence: /^The disc can’t be seen in (?<lost>\d+) of (?<frames>\d+) frames/ },
  { id: 'discDoubtful', sentence: /^The disc’s place is doubtful in (?<doubtful>\d+) of (?<frames>\d+) frames/ },
  { id: 'noRimAtClick', sentence: /^No rim of a disc shows round the click at frame (?<frame>\d+)/ },
  { id: 'pointLost', sentence: /^The point can’t be told apart in (?<lost>\d+) of (?<frames>\d+) frames/ },
  { id: 'nobodySeen', sentence: /^Nobody could be seen in this clip/ },
  { id: 'seldomSeen', sentence: /^The lifter could be seen in (?<percent>\d+) % of the clip only/ },
];

const packedSchema = v.object({ warnings: v.optional(v.array(v.string()), []) });

/** Part of the migration to messages: takes each recording's warnings out of its packed data, as messages. */
export function unpackWarnings(connection: Writing): void {
  for (const { row } of all<{ row: number }>(connection, 'SELECT rowid AS row FROM recording')) {
    const packed = first<{ data: Uint8Array }>(connection, 'SELECT data FROM recording WHERE rowid = ?', row);
    if (packed === undefined) continue;
    const { warnings } = v.parse(packedSchema, JSON.parse(gunzipSync(packed.data).toString('utf8')));
    if (warnings.length === 0) continue;
    const messages = warnings.flatMap((sentence) => messageOf(sentence) ?? []);
    run(connection, 'UPDATE recording SET warnings = ? WHERE rowid = ?', JSON.stringify(messages), row);
  }
}

function messageOf(text: string): Warning | null {
  for (const { id, sentence } of sentences) {
    const found = sentence.exec(text);
    if (found === null) continue;
    const values = Object.entries(found.groups ?? {}).map(([name, digits]) => [name, Number(digits)]);
    return v.parse(warningSchema, { id, values: Object.fromEntries(values) });
  }
  return null;
}
