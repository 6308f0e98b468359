import type { AgreementFigures, ReviewAgreement } from '../../engine/agreement/compareReviews.ts';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import { criterionName } from '../../engine/sheet/flagRows.ts';
import type { AgreementMessageId } from '../../engine/wording/english/desk/agreement.ts';
import { Strokes } from '../base/Strokes.tsx';
import { sayAgreement } from '../words/sayAgreement.ts';
import { saySeverity } from '../words/saySeverity.ts';
import { Absolute, Between, FigureWords, inWords, ShareBetween, two } from './FigureWords.tsx';

type AgreementTableProps = { readonly agreement: ReviewAgreement; readonly catalogue: Catalogue };

/** How far the two agree: over all, by criterion, by severity, with 95 % intervals. */
export function AgreementTable({ agreement, catalogue }: AgreementTableProps) {
  return (
    <section aria-label={sayAgreement('howFar')}>
      <p className="agreement-words" data-testid="agreement-words">
        {inWords(agreement)}
      </p>
      {agreement.overall.moments > 0 && (
        <>
          <FigureWords />
          <div className="agreement-scroll">
            <ByCriterion agreement={agreement} catalogue={catalogue} />
            <BySeverity agreement={agreement} />
          </div>
        </>
      )}
    </section>
  );
}

const criterionHeads = ['moments', 'same', 'kappa', 'quadraticKappa', 'ac1', 'alpha', 'intraclass'] as const;
const severityHeads = ['firstShort', 'secondShort', 'both', 'same', 'kappa', 'ac1'] as const;

type HeadsProps = { readonly first: AgreementMessageId; readonly others: readonly AgreementMessageId[] };

function Heads({ first, others }: HeadsProps) {
  return (
    <thead>
      <tr>
        <th scope="col">{sayAgreement(first)}</th>
        {others.map((head) => (
          <th key={head} scope="col" className="end">
            {sayAgreement(head)}
          </th>
        ))}
      </tr>
    </thead>
  );
}

function ByCriterion({ agreement: { overall, perCriterion }, catalogue }: AgreementTableProps) {
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
      <caption>{sayAgreement('byCriterion')}</caption>
      <Heads first="criterion" others={criterionHeads} />
      <tbody>
        {row(sayAgreement('all'), overall)}
        {perCriterion.map(({ criterion, figures }) => row(criterionName(catalogue, criterion), figures))}
      </tbody>
    </table>
  );
}

function BySeverity({ agreement: { perSeverity } }: { readonly agreement: ReviewAgreement }) {
  return (
    <table className="agreement-table">
      <caption>{sayAgreement('bySeverity')}</caption>
      <Heads first="severity" others={severityHeads} />
      <tbody>
        {perSeverity.map(({ severity, figures: of }) => (
          <tr key={severity} data-severity={severity}>
            <th scope="row">
              <Strokes severity={severity} named="elsewhere" /> {saySeverity(severity)}
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
