import type { Command } from 'commander';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import { type Exercise, type View, views } from '../../../engine/exercises/exercise.ts';
import { searchExercises } from '../../../engine/exercises/searchExercises.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import { sayJudgedFromHere, sayViewName } from '../../../engine/wording/sayView.ts';
import { judgingDataOf, loadCatalogue } from '../../backend/catalogue/loadCatalogue.ts';
import { example } from '../options/example.ts';
import { percent, shortNumber } from '../print/numbers.ts';
import { numberColumns, textColumns, textPairs, textTable } from '../print/table.ts';
import type { Host } from '../run/host.ts';
import { oneLine } from '../run/outcome.ts';
import { requireExercise } from '../sources/fromCatalogue.ts';

/** `exercise list [NAME]` and `exercise show NAME`: what the exercise library knows about each lift. */
export function addExercise(program: Command, host: Host): void {
  const exercise = program
    .command('exercise')
    .description('Lists the exercise library, or shows one exercise in full.');
  exercise
    .command('list')
    .description('Lists the exercises: id, name, movement pattern, best view, where the load is hardest.')
    .argument('[name]', 'list only those that go by a name like this, in English or German')
    .option('--json', 'print as JSON')
    .addHelpText('after', example('rackside exercise list', 'rackside exercise list "split squat"'))
    .action((name: string | undefined, options: { json?: true }) => {
      const exercises = searchExercises(loadCatalogue(host.appFolder), name ?? '');
      if (options.json) {
        const listed = exercises.map((one) => ({
          id: one.id,
          name: one.name,
          pattern: one.pattern,
          ...aliasesOf(one),
        }));
        host.print(`${JSON.stringify(listed)}\n`);
        return;
      }
      if (exercises.length === 0) host.say(`No exercise goes by a name like "${oneLine(name ?? '').slice(0, 60)}".`);
      host.print(
        textTable(
          textColumns('Id', 'Name', 'Pattern', 'Best view', 'Hardest at'),
          exercises.map(({ id, name, pattern, bestView, hardestAt }) => [id, name, pattern, bestView, hardestAt]),
        ),
      );
    });
  exercise
    .command('show')
    .description('Shows one exercise: phases, range rule, tempo, path, criteria with shares, faults with cues, ladder.')
    .argument('<name>', 'the exercise by id, name or an everyday name, in English or German')
    .option('--json', 'print as JSON')
    .addHelpText('after', example('rackside exercise show back-squat', 'rackside exercise show "military press"'))
    .action((name: string, options: { json?: true }) => {
      const catalogue = newestCatalogue(host);
      const known = requireExercise(catalogue, name, 'nothing was shown');
      host.print(options.json ? `${JSON.stringify(known)}\n` : describe(known, catalogue));
    });
}

/** The exercises as the newest rubric judges them, which new sessions take. */
function newestCatalogue(host: Host): Catalogue {
  const data = judgingDataOf(host.appFolder);
  return data.catalogue(data.rubricVersions().at(-1));
}

const aliasesOf = ({ aliases }: Exercise): Pick<Exercise, 'aliases'> => (aliases === undefined ? {} : { aliases });

const span = ([from, to]: readonly [number, number]): string =>
  from === to ? `${shortNumber(from, 1)} s` : `${shortNumber(from, 1)} to ${shortNumber(to, 1)} s`;

/** The times of a rep at the growth goal; a hold has one time alone. */
function timesOf({ beginsWith, targets, criteria }: Exercise): [string, string][] {
  const { growth } = targets.tempo;
  const isLowered = criteria.some(({ id }) => id === 'eccentricTempo');
  if (beginsWith === 'hold') return [['Hold', span(growth.pauseStretchedS)]];
  return [
    ['Eccentric', isLowered ? span(growth.eccentricS) : 'not judged: put down or let go'],
    ['Pause, stretched', span(growth.pauseStretchedS)],
    ['Concentric', growth.concentricS === null ? 'as fast as control allows' : span(growth.concentricS)],
    ['Pause, shortened', span(growth.pauseShortenedS)],
  ];
}

const alsoCalled = ({ aliases }: Exercise): [string, string][] => {
  const names = [...(aliases?.en ?? []), ...(aliases?.de ?? [])];
  return names.length === 0 ? [] : [['Also called', names.join(', ')]];
};

const hardestWords: Readonly<Record<Exercise['hardestAt'], string>> = {
  stretched: 'the stretched end',
  middle: 'the middle',
  shortened: 'the shortened end',
  even: 'no end: even',
};

const judgedWords = (exercise: Exercise, view: View, catalogue: Catalogue): string =>
  sayJudgedFromHere({ exercise, view, nameOf: (id) => criterionName(catalogue, id, exercise.id) }, 'en');

const rungWords = ({ exercise, why }: Exercise['ladder']['easier'][number]): string =>
  why === '' ? exercise : `${exercise}: ${why}`;

function describe(exercise: Exercise, catalogue: Catalogue): string {
  const { depth, path, headDeg, spine } = exercise.targets;
  const { easier, harder, betterSuited } = exercise.ladder;
  return [
    `${exercise.name} (${exercise.id})\n`,
    textPairs([
      ...alsoCalled(exercise),
      ['Pattern', `${exercise.pattern}, ${exercise.implement}`],
      ['Begins with', exercise.beginsWith],
      ['Stretched end', exercise.stretchedEnd],
      ['Shortened end', exercise.shortenedEnd],
      ['Range', depth],
      ...timesOf(exercise),
      ['Path', `${path.shape}, within ${shortNumber(path.toleranceM * 100, 1)} cm`],
      ['Head', `within ${headDeg} degrees of the set-up`],
      ['Spine', spine],
      ['Best view', sayViewName(exercise.bestView, 'en')],
      ...views.map((view): [string, string] => [
        `View: ${sayViewName(view, 'en')}`,
        judgedWords(exercise, view, catalogue),
      ]),
      ['Hardest at', hardestWords[exercise.hardestAt]],
      ['Muscles', `${exercise.muscles.direct.join(', ')}; also ${exercise.muscles.indirect.join(', ')}`],
      ['Needs', exercise.needs?.join(', ') || 'nothing'],
      ...easier.map((rung, at): [string, string] => [at === 0 ? 'Easier' : '', rungWords(rung)]),
      ...harder.map((rung, at): [string, string] => [at === 0 ? 'Harder' : '', rungWords(rung)]),
      ...betterSuited.map((rung, at): [string, string] => [at === 0 ? 'Better suited' : '', rungWords(rung)]),
    ]),
    textTable(
      [...textColumns('Criterion'), ...numberColumns('Share')],
      exercise.criteria.map(({ id, share }) => [id, percent(share)]),
    ),
    textTable(
      textColumns('Criterion', 'Fault', 'Cue', 'Usual severity'),
      exercise.faults.map(({ criterion, name, cue, usualSeverity }) => [criterion, name, cue.outcome, usualSeverity]),
    ),
  ].join('\n');
}
