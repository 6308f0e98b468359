import { type Command, InvalidArgumentError, Option } from 'commander';
import type { ClipOptions, Covering } from '../../contract/handover.ts';
import { UsageError } from '../run/outcome.ts';

/** Options that say how clips are made, as commander gives them. */
export type ClipFlags = {
  readonly slow?: number;
  readonly freeze?: number;
  readonly playOn?: true;
  readonly sound: boolean;
  readonly cover?: readonly CoverFlag[];
  readonly coverLook: Covering['look'];
};

type CoverFlag = 'head' | Covering['boxes'][number];

/** Adds the options of every command that makes clips. */
export function addClipOptions(command: Command): Command {
  return command
    .option('--slow <speed>', 'slow down around each note, to this share of full speed, such as 0.5', speed)
    .option('--freeze <seconds>', 'freeze the picture at each note for this many seconds (default: 1.5)', seconds)
    .option('--play-on', 'neither slow down nor freeze at notes')
    .option('--no-sound', 'leave the sound out')
    .option(
      '--cover <what...>',
      'cover "head" (found by the joints), or a box X,Y,WIDTH,HEIGHT in pixels of the upright picture',
      cover,
    )
    .addOption(new Option('--cover-look <look>', 'how covers look').choices(['filled', 'mosaic']).default('filled'));
}

/** What the options ask for. Throws a UsageError for two that exclude each other. */
export function clipOptionsOf(flags: ClipFlags & { readonly loops?: boolean }): ClipOptions {
  const { loops = false, slow, freeze, playOn, sound, cover: covers = [], coverLook: look } = flags;
  if ([slow, freeze, playOn].filter((each) => each !== undefined).length > 1) {
    throw new UsageError('--slow, --freeze and --play-on exclude each other: give one.');
  }
  const atNotes: ClipOptions['atNotes'] =
    slow !== undefined
      ? { do: 'slow', speed: slow }
      : playOn === true
        ? { do: 'playOn' }
        : { do: 'freeze', lastsS: freeze ?? 1.5 };
  return {
    atNotes,
    loops,
    narrated: false,
    sound: sound ? 'kept' : 'dropped',
    covering: {
      head: covers.includes('head'),
      boxes: covers.flatMap((each) => (each === 'head' ? [] : [each])),
      look,
    },
  };
}

function speed(written: string): number {
  return numberWithin(
    written,
    { least: 0.05, most: 1 },
    'A speed is a share of the original, from 0.05 to 1, such as 0.5.',
  );
}

function seconds(written: string): number {
  return numberWithin(written, { least: 0.1, most: 10 }, 'A freeze lasts 0.1 to 10 seconds, such as 1.5.');
}

function numberWithin(
  written: string,
  { least, most }: { readonly least: number; readonly most: number },
  sentence: string,
): number {
  const value = /^\d*\.?\d+$/.test(written) ? Number(written) : Number.NaN;
  if (value >= least && value <= most) return value;
  throw new InvalidArgumentError(sentence);
}

function cover(written: string, before: readonly CoverFlag[] | undefined): readonly CoverFlag[] {
  if (written === 'head') return [...(before ?? []), 'head'];
  const sides = written.split(',').map((part) => (/^-?\d+(?:\.\d+)?$/.test(part) ? Number(part) : Number.NaN));
  const [leftPx = Number.NaN, topPx = Number.NaN, widthPx = Number.NaN, heightPx = Number.NaN] = sides;
  const sound = sides.length === 4 && sides.every((each) => Math.abs(each) <= 100_000);
  if (sound && widthPx >= 1 && heightPx >= 1) return [...(before ?? []), { leftPx, topPx, widthPx, heightPx }];
  throw new InvalidArgumentError('A cover is "head", or X,Y,WIDTH,HEIGHT in pixels such as 420,80,90,90.');
}
