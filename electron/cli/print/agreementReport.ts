import type { GroupAgreement, GroupFigures } from '../../../engine/agreement/compareReviewers.ts';
import type { AgreementFigures, ReviewAgreement, SeverityFigures } from '../../../engine/agreement/compareReviews.ts';
import type { CriterionOnRep, UnpairedRep } from '../../../engine/agreement/judgedMoments.ts';
import { kappaBand } from '../../../engine/agreement/kappa.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import { criterionName, exerciseName } from '../../../engine/sheet/flagRows.ts';
import { oneLine } from '../run/outcome.ts';
import { absoluteAgreement, agreedPercent, coefficient, count, estimate, score, shortNumber } from './numbers.ts';
import { numberColumns, textColumns, textTable } from './table.ts';

const mostDifferences = 10;

/** What a clip is called, by its id. */
export type ClipName = (id: string) => string;

/** The figures of two reviews as tables of plain text: overall, by criterion, by severity, and where they differ most. */
export function agreementReport(
  agreement: ReviewAgreement,
  catalogue: Catalogue,
  clipName: ClipName = (id) => id,
): string {
  const { overall, perCriterion, perSeverity, onlyFirst, onlySecond } = agreement;
  const figures = textTable(
    [...textColumns(''), ...numberColumns('Moments', 'Same', 'Kappa', 'Quadratic kappa', 'AC1', 'Alpha', 'ICC(2,1)')],
    [
      row('All', overall),
      ...perCriterion.map(({ criterion, figures: of }) => row(criterionName(catalogue, criterion), of)),
    ],
  );
  const bySeverity = textTable(
    [...textColumns('Severity'), ...numberColumns('First', 'Second', 'Both', 'Same', 'Kappa', 'AC1')],
    perSeverity.map(({ severity, figures: of }) => [
      ...[severity, String(of.first), String(of.second), String(of.both)],
      ...[same(of), estimate(of.kappa), estimate(of.ac1)],
    ]),
  );
  const band = overall.kappa === null ? '' : `Kappa: ${kappaBand(overall.kappa.value)} (Landis & Koch 1977).\n`;
  const brackets = 'In brackets: 95 % intervals, where there is enough to tell.\n';
  const unpaired = `Looked at in one review only: ${count(onlyFirst, 'moment')} in the first, ${onlySecond} in the second.\n`;
  const differences = agreement.differences.map((moment) => ({
    ...moment,
    said: [moment.first.severity, moment.second.severity],
  }));
  return [
    figures,
    bySeverity,
    band + apart(overall.meanDifference) + brackets + unpaired + unpairedWords(agreement.unpairedReps),
    ...furthestApart(differences, ['First', 'Second'], { catalogue, clipName }),
  ].join('\n');
}

/** Which of the two scores higher on average: what consistency leaves out, and kappa does not show. */
function apart(meanDifference: number | null): string {
  if (meanDifference === null) return '';
  const points = score(Math.abs(meanDifference));
  if (points === '0.0') return 'Scores: the same on average.\n';
  return `Scores: the ${meanDifference > 0 ? 'first' : 'second'} gives ${points} points more on average.\n`;
}

const unpairedWords = (reps: readonly UnpairedRep[]): string =>
  reps.length === 0 ? '' : `Not marked in every review: ${count(reps.length, 'rep')}; reps are paired by their time.\n`;

/** A table of the largest differences, with a column for each reviewer; nothing if there are none. */
export function furthestApart(
  differences: readonly (CriterionOnRep & { readonly said: readonly string[] })[],
  reviewers: readonly string[],
  { catalogue, clipName }: { readonly catalogue: Catalogue; readonly clipName: ClipName },
): string[] {
  if (differences.length === 0) return [];
  const table = textTable(
    textColumns('Exercise', 'Clip', 'Rep', 'Criterion', ...reviewers),
    differences
      .slice(0, mostDifferences)
      .map(({ exercise, clip, rep, criterion, said }) => [
        ...[exerciseName(catalogue, exercise), clipName(clip), rep === null ? 'set' : String(rep)],
        ...[criterionName(catalogue, criterion), ...said],
      ]),
  );
  return [`Furthest apart\n${table}`];
}

const row = (name: string, figures: AgreementFigures): string[] => [
  name,
  String(figures.moments),
  same(figures),
  estimate(figures.kappa),
  estimate(figures.quadraticKappa),
  estimate(figures.ac1),
  coefficient(figures.ordinalAlpha),
  absoluteAgreement(figures.intraclass),
];

function same({ percent: share, percentInterval: interval }: SeverityFigures | AgreementFigures): string {
  if (share === null) return '–';
  return interval === null
    ? agreedPercent(share)
    : `${agreedPercent(share)} (${agreedPercent(interval.low)} to ${agreedPercent(interval.high)})`;
}

/**
 * The figures of three or more reviews as tables of plain text: overall, by criterion, by severity, two by two, and where
 * they differ most. `files` are the reviews as the person named them.
 */
export function groupReport(agreement: GroupAgreement, catalogue: Catalogue, files: readonly string[]): string {
  const { overall, perCriterion, perSeverity, pairs, notShared } = agreement;
  const reviewers = files.map((_, index) => String(index + 1));
  const legend = files.map((file, index) => `${index + 1}  ${oneLine(file)}\n`).join('');
  const figures = textTable(
    [
      ...textColumns(''),
      ...numberColumns('Moments', 'All the same', 'Pairs the same', "Fleiss' kappa", 'z', 'Alpha', 'ICC(2,1)'),
    ],
    [
      groupRow('All', overall),
      ...perCriterion.map(({ criterion, figures: of }) => groupRow(criterionName(catalogue, criterion), of)),
    ],
  );
  const bySeverity = textTable(
    [...textColumns('Severity'), ...numberColumns(...reviewers, "Fleiss' kappa")],
    perSeverity.map(({ severity, given, kappa }) => [severity, ...given.map(String), coefficient(kappa)]),
  );
  const twoByTwo = textTable(
    [...textColumns('Pair'), ...numberColumns('Moments', 'Same', "Cohen's kappa")],
    pairs.map(({ first, second, moments, percent: share, kappa }) => [
      `${first + 1} and ${second + 1}`,
      ...[String(moments), share === null ? '–' : agreedPercent(share), estimate(kappa)],
    ]),
  );
  const band =
    overall.fleiss === null ? '' : `Fleiss' kappa: ${kappaBand(overall.fleiss.value)} (Landis & Koch 1977).\n`;
  const brackets = 'In brackets: 95 % intervals, where there is enough to tell.\n';
  const unpaired = `Looked at by some but not all: ${count(notShared, 'moment')}, counted by alpha and the pairs alone.\n`;
  const differences = agreement.differences.map((moment) => ({
    ...moment,
    said: moment.verdicts.map(({ severity }) => severity),
  }));
  return [
    legend,
    figures,
    bySeverity,
    twoByTwo,
    band + brackets + unpaired + unpairedWords(agreement.unpairedReps),
    ...furthestApart(differences, reviewers, { catalogue, clipName: (id) => id }),
  ].join('\n');
}

const groupRow = (name: string, { moments, unanimous, pairsAgree, fleiss, ...figures }: GroupFigures): string[] => [
  ...[name, String(moments), unanimous === null ? '–' : agreedPercent(unanimous)],
  ...[pairsAgree === null ? '–' : agreedPercent(pairsAgree), coefficient(fleiss?.value ?? null)],
  ...[fleiss === null ? '–' : shortNumber(fleiss.z, 1), coefficient(figures.ordinalAlpha)],
  absoluteAgreement(figures.intraclass),
];
