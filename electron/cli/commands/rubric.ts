import type { Command } from 'commander';
import { diffRubrics } from '../../../engine/rubric/diffRubrics.ts';
import type { Rubric } from '../../../engine/rubric/rubric.ts';
import { exerciseRule, type ProgrammeRule, programmeRule } from '../../../engine/rubric/rules.ts';
import { firstRubricVersion, judgingDataOf } from '../../backend/catalogue/loadCatalogue.ts';
import { example } from '../options/example.ts';
import { shortNumber } from '../print/numbers.ts';
import { numberColumns, textColumns, textPairs, textTable } from '../print/table.ts';
import type { Host } from '../run/host.ts';
import { readRubric } from '../sources/fromCatalogue.ts';

/** `rubric show` and `rubric diff`: every number of the grading arithmetic, and the anchors. */
export function addRubric(program: Command, host: Host): void {
  const rubric = program.command('rubric').description('Shows the rubric, or compares two: its numbers and its words.');
  rubric
    .command('show')
    .description('Shows the rubric: costs, shares, caps, marks, and what each severity of a criterion looks like.')
    .option('--version <rubric>', 'a version number or a rubric file (JSON) (default: the newest version)')
    .option('--json', 'print as JSON')
    .addHelpText('after', example('rackside rubric show --version 1'))
    .action(async (options: { version?: string; json?: true }) => {
      const known = await readRubric(host, options.version ?? newest(host));
      host.print(options.json ? `${JSON.stringify(known)}\n` : describe(known));
    });
  rubric
    .command('diff')
    .description('Lists what differs between two rubrics: numbers, criteria, and what each severity looks like.')
    .argument('<from>', 'a version number or a rubric file (JSON)')
    .argument('<to>', 'the one to compare it with')
    .option('--json', 'print as JSON')
    .addHelpText('after', example('rackside rubric diff 1 2'))
    .action(async (from: string, to: string, options: { json?: true }) => {
      const differences = diffRubrics(await readRubric(host, from), await readRubric(host, to));
      if (options.json) {
        host.print(`${JSON.stringify(differences.map(({ path: place, ...change }) => ({ place, ...change })))}\n`);
        return;
      }
      const rows = differences.map((one) => [one.path, one.from ?? '(none)', one.to ?? '(none)']);
      host.print(rows.length === 0 ? 'No differences.\n' : textTable(textColumns('Where', 'From', 'To'), rows));
    });
}

const newest = (host: Host): string =>
  String(judgingDataOf(host.appFolder).rubricVersions().at(-1) ?? firstRubricVersion);

/** A criterion by its place from the lowest up. */
function rankWords(rank: number): string {
  if (rank === 1) return 'Lowest criterion';
  return rank === 2 ? 'Second lowest' : `Lowest but ${rank - 1}`;
}

function sessionRule(rule: ProgrammeRule): string {
  if (rule.kind === 'share') {
    return `${shortNumber(rule.technique, 2)} technique, ${shortNumber(rule.programme, 2)} programme`;
  }
  const { prefer, adjust, correct, stop } = rule.cost;
  return `technique, less ${prefer} (prefer), ${adjust} (adjust), ${correct} (correct) or ${stop} (stop) for each finding on the programme, ${rule.most} at most`;
}

function describe(rubric: Rubric): string {
  const share = (value: number): string => shortNumber(value, 2);
  const exercise = exerciseRule(rubric);
  const nameOf = (id: string): string => rubric.criteria.find((criterion) => criterion.id === id)?.name ?? id;
  return [
    `${rubric.name}, version ${rubric.version}\n`,
    textPairs([
      ...Object.entries(rubric.cost).map(([severity, cost]): [string, string] => [`Cost of ${severity}`, share(cost)]),
      ['Looked at', rubric.lookedAt === 'cell' ? 'each rep of a criterion by itself' : 'each criterion as a whole'],
      ['Weighted mean', `${share(exercise.meanShare)} points off for each point below 100`],
      ...exercise.lowest.map(({ rank, under, share: part }): [string, string] => [
        rankWords(rank),
        `${shortNumber(part, 3)} points off for each point below ${under}`,
      ]),
      ['A stop flag', `no exercise above ${rubric.stopCap.exercise}, no session above ${rubric.stopCap.session}`],
      [
        'Provisional',
        `under ${share(rubric.coverage.provisionalUnder)} looked at; no grade under ${share(rubric.coverage.noneUnder)}`,
      ],
      ['Session', sessionRule(programmeRule(rubric))],
    ]),
    textTable(
      [...textColumns('Grade'), ...numberColumns('From', 'Grade points')],
      rubric.letters.map(({ letter, from, gradePoints }) => [letter, String(from), gradePoints.toFixed(1)]),
    ),
    ...rubric.criteria.map(({ name, question, partOf, everywhere, anchors }) => {
      const about = [
        ...(partOf === undefined ? [] : [`part of ${nameOf(partOf)}`]),
        ...(everywhere === undefined ? [] : [`${share(everywhere.share)} of every exercise`]),
      ].join('; ');
      return `${name}${about === '' ? '' : ` (${about})`}: ${question}\n${textPairs(Object.entries(anchors))}`;
    }),
  ].join('\n');
}
