import type { Command } from 'commander';
import { diffRubrics } from '../../../engine/rubric/diffRubrics.ts';
import type { Rubric } from '../../../engine/rubric/rubric.ts';
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
    .description('Shows the rubric: costs, shares, caps, marks, and what each weight of a criterion looks like.')
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

function describe(rubric: Rubric): string {
  const share = (value: number): string => shortNumber(value, 2);
  const nameOf = (id: string): string => rubric.criteria.find((criterion) => criterion.id === id)?.name ?? id;
  return [
    `${rubric.name}, version ${rubric.version}\n`,
    textPairs([
      ...Object.entries(rubric.cost).map(([weight, cost]): [string, string] => [`Cost of ${weight}`, share(cost)]),
      ['Lowest criterion', `${share(rubric.lowestShare)} of the exercise score`],
      ['A stop flag', `no exercise above ${rubric.stopCap.exercise}, no session above ${rubric.stopCap.session}`],
      [
        'Provisional',
        `under ${share(rubric.coverage.provisionalUnder)} looked at; no grade under ${share(rubric.coverage.noneUnder)}`,
      ],
      [
        'Session',
        `${share(rubric.sessionShare.technique)} technique, ${share(rubric.sessionShare.programme)} programme`,
      ],
    ]),
    textTable(
      [...textColumns('Mark'), ...numberColumns('From', 'Points')],
      rubric.letters.map(({ letter, from, gradePoints }) => [letter, String(from), gradePoints.toFixed(1)]),
    ),
    ...rubric.criteria.map(
      ({ name, question, partOf, anchors }) =>
        `${name}${partOf === undefined ? '' : ` (part of ${nameOf(partOf)})`}: ${question}\n${textPairs(Object.entries(anchors))}`,
    ),
  ].join('\n');
}
