import type { Command } from 'commander';
import { type AgreementFigures, compareReviews, type Estimate, kappaBand } from '../../../engine/agreement/index.ts';
import { reviewUnder } from '../../../engine/review/index.ts';
import { criterionName, exerciseName } from '../../../engine/sheet/index.ts';
import { example } from '../example.ts';
import type { Host } from '../host.ts';
import { percent, shortNumber } from '../numbers.ts';
import { readSession } from '../readSession.ts';
import { textTable } from '../table.ts';

const mostDifferences = 10;

const figure = (value: number | null | undefined): string =>
  value === null || value === undefined ? '–' : shortNumber(value, 3);

function interval(estimate: Estimate | null): string {
  if (estimate === null) return '–';
  const { value, low, high } = estimate;
  return low === null || high === null ? figure(value) : `${figure(value)} (${figure(low)} to ${figure(high)})`;
}

const row = (name: string, figures: AgreementFigures): string[] => [
  name,
  String(figures.moments),
  figures.percent === null ? '–' : percent(figures.percent),
  interval(figures.kappa),
  interval(figures.quadraticKappa),
  figure(figures.ac1),
  figure(figures.ordinalAlpha),
  interval(figures.intraclass?.twoWayRandomSingle ?? null),
];

/** `agree A.json B.json`: how far two reviews of the same session agree, and where they differ most. */
export function addAgree(program: Command, host: Host): void {
  program
    .command('agree')
    .description('Measures how far two reviews of the same clips agree: two coaches, or one coach a week apart.')
    .argument('<first>', 'a review file (JSON)')
    .argument('<second>', 'another review of the same session (JSON)')
    .option('--json', 'print all figures as JSON')
    .addHelpText('after', example('rackside agree mine.json yours.json'))
    .action(async (first: string, second: string, options: { json?: true }) => {
      const { review, catalogue } = await readSession(host, first);
      const { review: other, catalogue: from } = await readSession(host, second);
      const agreement = compareReviews(review, reviewUnder(other, { from, to: catalogue }), catalogue);
      if (options.json) {
        host.print(`${JSON.stringify(agreement)}\n`);
        return;
      }
      const { overall, perCriterion, differences, onlyFirst, onlySecond } = agreement;
      const labels = ['', 'Moments', 'Same', 'Kappa', 'Quadratic kappa', 'AC1', 'Alpha', 'ICC(2,1)'];
      const figures = textTable(
        labels.map((label, index) => ({ label, align: index === 0 ? 'start' : 'end' })),
        [
          row('All', overall),
          ...perCriterion.map(({ criterion, figures: of }) => row(criterionName(catalogue, criterion), of)),
        ],
      );
      const band = overall.kappa === null ? '' : `Kappa: ${kappaBand(overall.kappa.value)} (Landis & Koch 1977).\n`;
      const where = textTable(
        ['Exercise', 'Clip', 'Rep', 'Criterion', 'First', 'Second'].map((label) => ({ label, align: 'start' })),
        differences
          .slice(0, mostDifferences)
          .map((moment) => [
            exerciseName(catalogue, moment.exercise),
            moment.clip,
            moment.rep === null ? 'set' : String(moment.rep),
            criterionName(catalogue, moment.criterion),
            moment.first.weight,
            moment.second.weight,
          ]),
      );
      const unpaired = `Looked at by one alone: ${onlyFirst} moments in the first review, ${onlySecond} in the second.\n`;
      host.print(
        [figures, band + unpaired, ...(differences.length > 0 ? [`Furthest apart\n${where}`] : [])].join('\n'),
      );
    });
}
