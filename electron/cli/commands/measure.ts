import { type Command, InvalidArgumentError, Option } from 'commander';
import * as v from 'valibot';
import { type Exercise, type View, views } from '../../../engine/exercises/exercise.ts';
import { followedParts } from '../../../engine/motion/measurement.ts';
import { type Click, type SetUp, setUpSchema } from '../../../engine/recording/setUp.ts';
import { judgingDataOf } from '../../backend/catalogue/loadCatalogue.ts';
import { ProblemError } from '../../contract/reply.ts';
import { example } from '../options/example.ts';
import { measureJson } from '../print/measureJson.ts';
import { measureReport } from '../print/measureReport.ts';
import { count } from '../print/numbers.ts';
import type { Host } from '../run/host.ts';
import { oneLine, UsageError } from '../run/outcome.ts';
import { requireExercise } from '../sources/fromCatalogue.ts';
import { type MeasuredFile, measureFiles } from '../sources/measureFiles.ts';

type MeasureOptions = {
  readonly exercise: string;
  readonly disc?: Omit<Click, 'frame'>;
  readonly discBox?: Omit<Click, 'frame'>;
  readonly lifter?: Omit<Click, 'frame'>;
  readonly at?: number;
  readonly facing?: 'left' | 'right';
  readonly camera?: View;
  readonly diameter?: number;
  readonly follow?: Exclude<SetUp['follow'], 'auto'>;
  readonly joints: boolean;
  readonly json?: true;
};

/** What a person may choose to be followed. */
const followChoices = ['disc', ...followedParts] as const;

/** `measure FILE...`: reps, phases, range, speed, drift and joints of clips, and what they suggest. */
export function addMeasure(program: Command, host: Host): void {
  program
    .command('measure')
    .description(
      'Measures clips: reps with their phases, range and speed from the disc, or the body if there is none, drift, angles and depth.',
    )
    .argument('<files...>', 'the clips, all of one exercise')
    .requiredOption('--exercise <name>', 'the exercise they show, by id or name (see "exercise list")')
    .option('--disc <x,y[,r]>', 'where the near disc is, and its radius, in pixels of the upright picture', discClick)
    .option(
      '--disc-box <l,t,r,b>',
      'a box round the disc instead, if it is turned: its left, top, right and bottom edges',
      discBox,
    )
    .option('--lifter <x,y>', 'where the lifter’s trunk is, if several people are in the picture', lifterClick)
    .option('--at <frame>', 'the frame of --disc, --disc-box and --lifter, counted from 0 (default: 0)', frameNumber)
    .addOption(new Option('--facing <side>', 'which way the lifter faces in the picture').choices(['left', 'right']))
    .addOption(new Option('--camera <view>', 'where the camera stands (default: read from the joints)').choices(views))
    .option('--diameter <metres>', 'diameter of the near disc in metres (default: 0.45)', metres)
    .addOption(
      new Option('--follow <what>', 'what to follow (default: whatever shows the load best)').choices(followChoices),
    )
    .option('--no-joints', 'follow the disc alone: much faster')
    .option('--json', 'print as JSON: an object for one clip, an array for several; times in media seconds')
    .addHelpText(
      'after',
      example(
        'rackside measure squat.mp4 --exercise back-squat',
        'rackside measure set-1.mp4 set-2.mp4 --exercise deadlift --no-joints --json',
        'rackside measure squat.mp4 --exercise back-squat --disc 412,187 --at 30 --facing right',
      ),
    )
    .action(async (files: string[], options: MeasureOptions) => {
      const clicks = [options.disc, options.discBox, options.lifter].flatMap((click) =>
        click === undefined ? [] : [{ ...click, frame: options.at ?? 0 }],
      );
      if (!options.joints && options.follow !== undefined && options.follow !== 'disc') {
        throw new UsageError('--no-joints leaves only the disc to follow: leave out --follow or --no-joints.');
      }
      if (options.at !== undefined && clicks.length === 0) {
        throw new UsageError(
          '--at names the frame that --disc, --disc-box or --lifter refers to: give one of them as well.',
        );
      }
      if (options.disc !== undefined && options.discBox !== undefined) {
        throw new UsageError('--disc and --disc-box both say where the disc is: give one of them.');
      }
      const { exercise, rubricCriteria } = knownExercise(host, options.exercise);
      const measured = await measureFiles(host, files, {
        exercise,
        rubricCriteria,
        view: options.camera ?? null,
        joints: options.joints,
        setUp: v.parse(setUpSchema, {
          ...(options.diameter !== undefined && { discDiameterM: options.diameter }),
          ...(options.facing !== undefined && { facing: options.facing }),
          ...(options.follow !== undefined && { follow: options.follow }),
          clicks,
        }),
      });
      const [only] = measured;
      if (files.length === 1 && only?.kind === 'failed') {
        throw ProblemError.of(only.problem);
      }
      if (options.json) {
        const answers = measured.map(measureJson);
        host.print(`${JSON.stringify(files.length === 1 ? answers[0] : answers, withoutNoise)}\n`);
      } else {
        host.print(measured.map((each) => measureReport(each, exercise)).join('\n'));
      }
      requireAllMeasured(measured);
    });
}

/** No measure is worth more than ten digits, and 1.2 stays 1.2. */
const withoutNoise = (_key: string, value: unknown): unknown =>
  typeof value === 'number' ? Number(value.toPrecision(10)) : value;

/** Throws one sentence that names the clips that failed; each reason was said as it happened. */
function requireAllMeasured(measured: readonly MeasuredFile[]): void {
  const failed = measured.filter((each) => each.kind === 'failed');
  if (failed.length === 0) return;
  const names = failed.map(({ file }) => `"${oneLine(file).slice(0, 80)}"`).join(', ');
  const how = `${failed.length} of ${count(measured.length, 'clip')}`;
  throw ProblemError.inWords('bad-media', `${how} could not be measured (${names}); the others were.`);
}

function knownExercise(host: Host, name: string): { exercise: Exercise; rubricCriteria: readonly string[] } {
  const judging = judgingDataOf(host.appFolder);
  const catalogue = judging.catalogue(judging.rubricVersions().at(-1));
  const exercise = requireExercise(catalogue, name, 'nothing was measured');
  return { exercise, rubricCriteria: catalogue.rubric.criteria.map((criterion) => criterion.id) };
}

/** Numbers as they are written with commas between them; null when one of them is none, or out of all bounds. */
function pixelsIn(written: string): readonly number[] | null {
  const numbers = written.split(',').map((part) => (/^\d+(\.\d+)?$/.test(part.trim()) ? Number(part) : Number.NaN));
  return numbers.every((number) => number <= 100_000) ? numbers : null;
}

function lifterClick(written: string): Omit<Click, 'frame'> {
  const [xPx, yPx, ...more] = pixelsIn(written) ?? [];
  if (xPx === undefined || yPx === undefined || more.length > 0) {
    throw new InvalidArgumentError('The lifter is given as X,Y in pixels: 412,187.');
  }
  return { what: 'lifter', at: { xPx, yPx } };
}

function discClick(written: string): Omit<Click, 'frame'> {
  const [xPx, yPx, radiusPx, ...more] = pixelsIn(written) ?? [];
  if (xPx === undefined || yPx === undefined || more.length > 0) {
    throw new InvalidArgumentError('The disc is given as X,Y or X,Y,RADIUS in pixels: 412,187 or 412,187,60.');
  }
  if (radiusPx !== undefined && (radiusPx < 2 || radiusPx > 5000)) {
    throw new InvalidArgumentError('The radius of the disc is 2 to 5000 pixels.');
  }
  return { what: 'disc', at: { xPx, yPx }, ...(radiusPx !== undefined && { radiusPx }) };
}

function discBox(written: string): Omit<Click, 'frame'> {
  const [leftPx, topPx, rightPx, bottomPx, ...more] = pixelsIn(written) ?? [];
  if (
    leftPx === undefined ||
    topPx === undefined ||
    rightPx === undefined ||
    bottomPx === undefined ||
    more.length > 0
  ) {
    throw new InvalidArgumentError('The box is given as LEFT,TOP,RIGHT,BOTTOM in pixels: 380,110,450,250.');
  }
  if (rightPx - leftPx < 4 || bottomPx - topPx < 4) {
    throw new InvalidArgumentError(
      'The box must be at least 4 pixels wide and high, with left before right and top before bottom.',
    );
  }
  const box = { leftPx, topPx, rightPx, bottomPx };
  return { what: 'disc', at: { xPx: (leftPx + rightPx) / 2, yPx: (topPx + bottomPx) / 2 }, box };
}

function frameNumber(written: string): number {
  if (/^\d{1,7}$/.test(written)) return Number(written);
  throw new InvalidArgumentError('A frame is a whole number, counted from 0.');
}

function metres(written: string): number {
  const value = /^\d+(\.\d+)?$/.test(written) ? Number(written) : Number.NaN;
  if (value >= 0.01 && value <= 5) return value;
  throw new InvalidArgumentError('A diameter is given in metres, 0.01 to 5: 0.45.');
}
