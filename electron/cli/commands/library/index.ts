import type { Command } from 'commander';
import type { Host } from '../../host.ts';
import { addImport } from './import.ts';
import { addInit } from './init.ts';
import { addList } from './list.ts';
import { addLibraryMeasure } from './measure.ts';
import { addSecondLook } from './secondLook.ts';
import { addVerify } from './verify.ts';

/** `library ...`: a library's upkeep. */
export function addLibrary(program: Command, host: Host): void {
  const library = program
    .command('library')
    .description("A library's upkeep: make one, take clips in, list, measure, look again, check.");
  for (const add of [addInit, addImport, addList, addLibraryMeasure, addSecondLook, addVerify]) add(library, host);
}
