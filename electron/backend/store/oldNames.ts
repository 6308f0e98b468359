import type { Message } from '../../../engine/message/message.ts';
import type { JournaledTable, Row } from './changes.ts';

/** Columns that a migration renamed, by table: old name, then today's. */
const renamedColumns: Partial<Readonly<Record<JournaledTable, Readonly<Record<string, string>>>>> = {
  flag: { weight: 'severity' },
  rep: {
    long_end_frame: 'stretched_end_frame',
    long_end_ticks: 'stretched_end_ticks',
    long_end_seconds: 'stretched_end_seconds',
    long_end_measured: 'stretched_end_measured',
  },
};

/** A row that the change log remembers, with its columns under today's names: the log is older than some of them. */
export function rowInNewNames(table: JournaledTable, row: Row): Row {
  const names = renamedColumns[table] ?? {};
  return Object.fromEntries(Object.entries(row).map(([name, value]) => [names[name] ?? name, value]));
}

const endsNow: Readonly<Record<string, string>> = { longEnd: 'stretchedEnd', shortEnd: 'shortenedEnd' };

/** A note that is kept as a message, with the ends of the range under today's names. */
export function noteInNewNames({ id, values }: Message): Message {
  const { where } = values;
  return typeof where === 'string' ? { id, values: { ...values, where: endsNow[where] ?? where } } : { id, values };
}
