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
    .description('Lists what differs between two rubrics: numbers, criteria, anchors.')
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
      const rows = differences.map((one) => [one.path, one.from ?? '(not there)', one.to ?? '(not there)']);
      host.print(rows.length === 0 ? 'They do not differ.\n' : textTable(textColumns('Where', 'From', 'To'), rows));
    });
}

const newest = (host: Host): string =>
  String(judgingDataOf(host.appFolder).rubricVersions().at(-1) ?? firstRubricVersion);

function sessionRule(rule: ProgrammeRule): string {
  if (rule.kind === 'share') {
    return `${shortNumber(rule.technique, 2)} technique, ${shortNumber(rule.programme, 2)} programme`;
  }
  const { prefer, adjust, correct, stop } = rule.cost;
  return `technique less ${prefer} (prefer), ${adjust} (adjust), ${correct} (correct), ${stop} (stop) a finding, at most ${rule.most}`;
}

function describe(rubric: Rubric): string {
  const share = (value: number): string => shortNumber(value, 2);
  const exercise = exerciseRule(rubric);
  const nameOf = (id: string): string => rubric.criteria.find((criterion) => criterion.id === id)?.name ?? id;
  return [
    `${rubric.name}, version ${rubric.version}\n`,
    textPairs([
      ...Object.entries(rubric.cost).map(([severity, cost]): [string, string] => [`Cost of ${severity}`, share(cost)]),
      [
        'Looked at',
        rubric.lookedAt === 'cell' ? 'each rep of a criterion counts for itself' : 'a criterion as a whole',
      ],
      ['Weighted mean', `${share(exercise.meanShare)} off for each point it lacks to 100`],
      ...exercise.lowest.map(({ rank, under, share: part }): [string, string] => [
        rank === 1 ? 'Lowest criterion' : `Lowest but ${rank - 1}`,
        `${shortNumber(part, 3)} off for each point it lacks to ${under}`,
      ]),
      ['A stop flag', `no exercise above ${rubric.stopCap.exercise}, no session above ${rubric.stopCap.session}`],
      [
        'Provisional',
        `under ${share(rubric.coverage.provisionalUnder)} looked at; no grade under ${share(rubric.coverage.noneUnder)}`,
      ],
      ['Session', sessionRule(programmeRule(rubric))],
    ]),
    textTable(
      [...textColumns('Mark'), ...numberColumns('From', 'Points')],
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
