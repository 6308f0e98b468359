import type { GroupAgreement, GroupFigures } from '../../../engine/agreement/compareReviewers.ts';
import { kappaBand } from '../../../engine/agreement/kappa.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import { oneLine } from '../run/outcome.ts';
import { furthestApart } from './agreementReport.ts';
import { coefficient, count, estimate, percent, shortNumber } from './numbers.ts';
import { numberColumns, textColumns, textTable } from './table.ts';

/**
 * The figures of three or more reviews as tables of plain text: overall, by criterion, by weight, two by two, and where
 * they differ most. `files` are the reviews as the person named them.
 */
export function groupReport(agreement: GroupAgreement, catalogue: Catalogue, files: readonly string[]): string {
  const { overall, perCriterion, perWeight, pairs, notShared } = agreement;
  const reviewers = files.map((_, index) => String(index + 1));
  const legend = files.map((file, index) => `${index + 1}  ${oneLine(file)}\n`).join('');
  const figures = textTable(
    [
      ...textColumns(''),
      ...numberColumns('Moments', 'All the same', 'Pairs the same', "Fleiss' kappa", 'z', 'Alpha', 'ICC(2,1)'),
    ],
    [
      row('All', overall),
      ...perCriterion.map(({ criterion, figures: of }) => row(criterionName(catalogue, criterion), of)),
    ],
  );
  const byWeight = textTable(
    [...textColumns('Weight'), ...numberColumns(...reviewers, "Fleiss' kappa")],
    perWeight.map(({ weight, given, kappa }) => [weight, ...given.map(String), coefficient(kappa)]),
  );
  const twoByTwo = textTable(
    [...textColumns('Two of them'), ...numberColumns('Moments', 'Same', "Cohen's kappa")],
    pairs.map(({ first, second, moments, percent: share, kappa }) => [
      `${first + 1} and ${second + 1}`,
      ...[String(moments), share === null ? '–' : percent(share), estimate(kappa)],
    ]),
  );
  const band =
    overall.fleiss === null ? '' : `Fleiss' kappa: ${kappaBand(overall.fleiss.value)} (Landis & Koch 1977).\n`;
  const brackets = 'In brackets: 95 % intervals, where there is enough to tell.\n';
  const unpaired = `Looked at by some but not all: ${count(notShared, 'moment')}, counted by alpha and the pairs alone.\n`;
  const differences = agreement.differences.map((moment) => ({
    ...moment,
    said: moment.verdicts.map(({ weight }) => weight),
  }));
  return [
    legend,
    figures,
    byWeight,
    twoByTwo,
    band + brackets + unpaired,
    ...furthestApart(differences, reviewers, { catalogue, clipName: (id) => id }),
  ].join('\n');
}

const row = (name: string, { moments, unanimous, pairsAgree, fleiss, ...figures }: GroupFigures): string[] => [
  ...[name, String(moments), unanimous === null ? '–' : percent(unanimous)],
  ...[pairsAgree === null ? '–' : percent(pairsAgree), coefficient(fleiss?.value ?? null)],
  ...[fleiss === null ? '–' : shortNumber(fleiss.z, 1), coefficient(figures.ordinalAlpha)],
  estimate(figures.intraclass?.twoWayRandomSingle ?? null),
];
