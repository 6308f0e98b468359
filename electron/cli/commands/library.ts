import type { Command } from 'commander';
import type { Host } from '../run/host.ts';
import { addImport } from './library/import.ts';
import { addInit } from './library/init.ts';
import { addList } from './library/list.ts';
import { addLibraryMeasure } from './library/measure.ts';
import { addReport } from './library/report.ts';
import { addSecondLook } from './library/secondLook.ts';
import { addVerify } from './library/verify.ts';

/** `library ...`: the commands that look after a library. */
export function addLibrary(program: Command, host: Host): void {
  const library = program
    .command('library')
    .description('Looks after a library: create, import, list, measure, look again, verify.');
  for (const add of [addInit, addImport, addList, addLibraryMeasure, addSecondLook, addVerify, addReport])
    add(library, host);
}
