import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Command } from 'commander';
import { addAbout } from '../commands/about.ts';
import { addAgree } from '../commands/agree.ts';
import { addBreakdown } from '../commands/breakdown.ts';
import { addClip } from '../commands/clip.ts';
import { addDemo } from '../commands/demo.ts';
import { addExercise } from '../commands/exercise.ts';
import { addFilmCard } from '../commands/filmCard.ts';
import { addGrade } from '../commands/grade.ts';
import { addHandover } from '../commands/handover.ts';
import { addLetter } from '../commands/letter.ts';
import { addLibrary } from '../commands/library.ts';
import { addMeasure } from '../commands/measure.ts';
import { addProbe } from '../commands/probe.ts';
import { addProgramme } from '../commands/programme.ts';
import { addRubric } from '../commands/rubric.ts';
import { addSheet } from '../commands/sheet.ts';
import { appFolderAbove } from '../run/appFolder.ts';
import { baseFolder, type Host, makeProgress, type Surroundings } from '../run/host.ts';
import { done, type Outcome, oneLine, outcomeOf } from '../run/outcome.ts';

/** Runs one command of the command line and gives its exit code. Never throws. */
export async function runCommandLine(args: readonly string[], surroundings: Surroundings): Promise<number> {
  const { output, messages, signal } = surroundings;
  const folder = baseFolder(surroundings.environment, surroundings.workingFolder);
  const progress = makeProgress(messages);
  const host: Host = {
    appFolder: appFolderAbove(import.meta.dirname),
    resolve: (name) => path.resolve(folder, name),
    print: (content) => void output.write(content),
    printsToTerminal: output.isTTY === true,
    say: (line) => {
      progress.clear();
      messages.write(`${line}\n`);
    },
    progress,
    signal,
  };
  const outcome = await settle(buildProgram(host).parseAsync(args, { from: 'user' }));
  progress.clear();
  if (signal.aborted) return 130;
  if (outcome.line !== '') messages.write(`${outcome.line}\n`);
  return outcome.code;
}

async function settle(work: Promise<unknown>): Promise<Outcome> {
  try {
    await work;
    return done;
  } catch (error) {
    return outcomeOf(error);
  }
}

/** The command line with all of its commands. Wrong use is thrown, never printed here. */
export function buildProgram(host: Host): Command {
  const program = new Command('rackside');
  program
    .description(
      'Reviews strength-training technique: clips, grades, letters, sheets. Works offline and never changes footage.',
    )
    .usage('COMMAND [options]')
    .version(versionOf(host.appFolder))
    .enablePositionalOptions()
    .exitOverride()
    .configureOutput({
      writeOut: host.print,
      writeErr: (text) => host.say(text.trimEnd()),
      outputError: () => undefined,
    })
    .addHelpText(
      'after',
      [
        '',
        'Every command takes --help, and --json for output that a program can read, on standard output.',
        'Exit codes: 0 done, 1 failed with one line on standard error, 2 wrong use, 130 cancelled.',
        'A file name that begins with a dash goes after "--":  rackside probe -- -clip.mp4',
      ].join('\n'),
    );
  for (const add of [
    addDemo,
    addProbe,
    addMeasure,
    addGrade,
    addLetter,
    addSheet,
    addBreakdown,
    addHandover,
    addClip,
    addProgramme,
    addAgree,
    addExercise,
    addFilmCard,
    addRubric,
    addLibrary,
    addAbout,
  ])
    add(program, host);
  program.on('command:*', ([name]: string[]) => {
    program.error(`unknown command "${oneLine(name ?? '')}"`, { code: 'commander.unknownCommand', exitCode: 2 });
  });
  return program;
}

function versionOf(appFolder: string): string {
  const description: { readonly version: string } = JSON.parse(
    readFileSync(path.join(appFolder, 'package.json'), 'utf8'),
  );
  return description.version;
}
