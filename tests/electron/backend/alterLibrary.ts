import path from 'node:path';
import { closeWriting, openWriting, runScript } from '../../../electron/backend/store/connection.ts';
import { followRows, makeDigestsAnew } from '../../../electron/backend/store/rowDigests.ts';

/** Changes rows of a library as an app that knows more would: with their digests, unlike a fault of the disk. */
export function alterLibrary(folder: string, sql: string): void {
  const writing = openWriting(path.join(folder, 'rackside.sqlite'));
  followRows(writing);
  runScript(writing, sql);
  closeWriting(writing);
}

/** Gives the rows of a library that was filled by statements the digests that they would have if the app had written them. */
export function digestAnew(folder: string): void {
  const writing = openWriting(path.join(folder, 'rackside.sqlite'));
  makeDigestsAnew(writing, []);
  closeWriting(writing);
}
