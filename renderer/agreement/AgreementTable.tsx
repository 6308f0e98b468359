import type { AgreementFigures, ReviewAgreement } from '../../engine/agreement/compareReviews.ts';
import type { Criterion } from '../../engine/rubric/rubric.ts';
import { Strokes } from '../base/Strokes.tsx';
import { Absolute, Between, FigureWords, inWords, ShareBetween, two } from './FigureWords.tsx';

type AgreementTableProps = { readonly agreement: ReviewAgreement; readonly criteria: readonly Criterion[] };

/** How far the two agree: over all, by criterion, by severity, with 95 % intervals. */
export function AgreementTable({ agreement, criteria }: AgreementTableProps) {
  return (
    <section aria-label="How far they agree">
      <p className="agreement-words" data-testid="agreement-words">
        {inWords(agreement)}
      </p>
      {agreement.overall.moments > 0 && (
        <>
          <FigureWords />
          <div className="agreement-scroll">
            <ByCriterion agreement={agreement} criteria={criteria} />
            <BySeverity agreement={agreement} />
          </div>
        </>
      )}
    </section>
  );
}

const criterionLabels = ['Moments', 'Same', 'Kappa', 'Kappa, quadratic', 'AC1', 'Alpha, ordinal', 'ICC(2,1) of scores'];

function Heads({ first, labels }: { readonly first: string; readonly labels: readonly string[] }) {
  return (
    <thead>
      <tr>
        <th scope="col">{first}</th>
        {labels.map((label) => (
          <th key={label} scope="col" className="end">
            {label}
          </th>
        ))}
      </tr>
    </thead>
  );
}

function ByCriterion({ agreement: { overall, perCriterion }, criteria }: AgreementTableProps) {
  const nameOf = (id: string): string => criteria.find((one) => one.id === id)?.name ?? id;
  const row = (name: string, of: AgreementFigures) => (
    <tr key={name}>
      <th scope="row">{name}</th>
      <td className="figure end">{of.moments}</td>
      <td className="figure end">
        <ShareBetween value={of.percent} interval={of.percentInterval} />
      </td>
      <td className="figure end">
        <Between estimate={of.kappa} />
      </td>
      <td className="figure end">
        <Between estimate={of.quadraticKappa} />
      </td>
      <td className="figure end">
        <Between estimate={of.ac1} />
      </td>
      <td className="figure end">{two(of.ordinalAlpha)}</td>
      <td className="figure end">
        <Absolute intraclass={of.intraclass} />
      </td>
    </tr>
  );
  return (
    <table className="agreement-table">
      <caption>By criterion, with 95 % intervals</caption>
      <Heads first="Criterion" labels={criterionLabels} />
      <tbody>
        {row('All', overall)}
        {perCriterion.map(({ criterion, figures }) => row(nameOf(criterion), figures))}
      </tbody>
    </table>
  );
}

function BySeverity({ agreement: { perSeverity } }: { readonly agreement: ReviewAgreement }) {
  return (
    <table className="agreement-table">
      <caption>By severity: whether both used it on the same moments</caption>
      <Heads first="Severity" labels={['First', 'Second', 'Both', 'Same', 'Kappa', 'AC1']} />
      <tbody>
        {perSeverity.map(({ severity, figures: of }) => (
          <tr key={severity} data-severity={severity}>
            <th scope="row">
              <Strokes severity={severity} named="elsewhere" /> {severity}
            </th>
            <td className="figure end">{of.first}</td>
            <td className="figure end">{of.second}</td>
            <td className="figure end">{of.both}</td>
            <td className="figure end">
              <ShareBetween value={of.percent} interval={of.percentInterval} />
            </td>
            <td className="figure end">
              <Between estimate={of.kappa} />
            </td>
            <td className="figure end">
              <Between estimate={of.ac1} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
