import type { Command } from 'commander';
import type { Host } from '../run/host.ts';
import { addImport } from './library/import.ts';
import { addInit } from './library/init.ts';
import { addList } from './library/list.ts';
import { addLibraryMeasure } from './library/measure.ts';
import { addReport } from './library/report.ts';
import { addSecondLook } from './library/secondLook.ts';
import { addVerify } from './library/verify.ts';

/** `library ...`: a library's upkeep. */
export function addLibrary(program: Command, host: Host): void {
  const library = program
    .command('library')
    .description("A library's upkeep: make one, take clips in, list, measure, look again, check.");
  for (const add of [addInit, addImport, addList, addLibraryMeasure, addSecondLook, addVerify, addReport])
    add(library, host);
}
