import { kappaBand } from '../../../engine/agreement/bands.ts';
import type { AgreementFigures, ReviewAgreement, WeightFigures } from '../../../engine/agreement/compareReviews.ts';
import type { Estimate } from '../../../engine/agreement/kappa.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import { criterionName, exerciseName } from '../../../engine/sheet/flagRows.ts';
import { percent, shortNumber } from './numbers.ts';
import { type Column, textTable } from './table.ts';

const mostDifferences = 10;

const figure = (value: number | null | undefined): string =>
  value === null || value === undefined ? '–' : shortNumber(value, 3);

function interval(estimate: Estimate | null): string {
  if (estimate === null) return '–';
  const { value, low, high } = estimate;
  return low === null || high === null ? figure(value) : `${figure(value)} (${figure(low)} to ${figure(high)})`;
}

function same({ percent: share, percentInterval: of }: WeightFigures | AgreementFigures): string {
  if (share === null) return '–';
  return of === null ? percent(share) : `${percent(share)} (${percent(of.low)} to ${percent(of.high)})`;
}

const columns = (...labels: readonly string[]): Column[] =>
  labels.map((label, index) => ({ label, align: index === 0 ? 'start' : 'end' }));

const row = (name: string, figures: AgreementFigures): string[] => [
  name,
  String(figures.moments),
  same(figures),
  interval(figures.kappa),
  interval(figures.quadraticKappa),
  interval(figures.ac1),
  figure(figures.ordinalAlpha),
  interval(figures.intraclass?.twoWayRandomSingle ?? null),
];

function furthest({ differences }: ReviewAgreement, catalogue: Catalogue, clipName: (id: string) => string): string[] {
  if (differences.length === 0) return [];
  const table = textTable(
    ['Exercise', 'Clip', 'Rep', 'Criterion', 'First', 'Second'].map((label) => ({ label, align: 'start' })),
    differences
      .slice(0, mostDifferences)
      .map((moment) => [
        exerciseName(catalogue, moment.exercise),
        clipName(moment.clip),
        moment.rep === null ? 'set' : String(moment.rep),
        criterionName(catalogue, moment.criterion),
        moment.first.weight,
        moment.second.weight,
      ]),
  );
  return [`Furthest apart\n${table}`];
}

/** The figures of two reviews as tables of plain text: over all, by criterion, by weight, and where they differ most. */
export function agreementText(
  agreement: ReviewAgreement,
  catalogue: Catalogue,
  clipName: (id: string) => string = (id) => id,
): string {
  const { overall, perCriterion, perWeight, onlyFirst, onlySecond } = agreement;
  const figures = textTable(columns('', 'Moments', 'Same', 'Kappa', 'Quadratic kappa', 'AC1', 'Alpha', 'ICC(2,1)'), [
    row('All', overall),
    ...perCriterion.map(({ criterion, figures: of }) => row(criterionName(catalogue, criterion), of)),
  ]);
  const byWeight = textTable(
    columns('Weight', 'First', 'Second', 'Both', 'Same', 'Kappa', 'AC1'),
    perWeight.map(({ weight, figures: of }) => [
      ...[weight, String(of.first), String(of.second), String(of.both)],
      ...[same(of), interval(of.kappa), interval(of.ac1)],
    ]),
  );
  const band = overall.kappa === null ? '' : `Kappa: ${kappaBand(overall.kappa.value)} (Landis & Koch 1977).\n`;
  const unpaired = `Looked at by one alone: ${onlyFirst} moments in the first review, ${onlySecond} in the second.\n`;
  const brackets = 'In brackets: 95 % intervals; none where there is too little to tell.\n';
  return [figures, byWeight, band + brackets + unpaired, ...furthest(agreement, catalogue, clipName)].join('\n');
}
