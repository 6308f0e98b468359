import type { AgreementFigures, Estimate, ReviewAgreement } from '../../engine/agreement/index.ts';
import { kappaBand } from '../../engine/agreement/index.ts';
import type { Criterion } from '../../engine/rubric/rubric.ts';
import { share } from '../parts/figures.ts';
import { Strokes } from '../parts/Strokes.tsx';

type AgreementTableProps = { readonly agreement: ReviewAgreement; readonly criteria: readonly Criterion[] };

const two = (value: number | null | undefined): string =>
  value === null || value === undefined ? '–' : value.toFixed(2);

function Between({ estimate }: { readonly estimate: Estimate | null | undefined }) {
  if (estimate === null || estimate === undefined) return <>–</>;
  const { value, low, high } = estimate;
  return (
    <>
      {two(value)}
      {low !== null && high !== null && (
        <span className="soft">
          {' '}
          {two(low)} to {two(high)}
        </span>
      )}
    </>
  );
}

function inWords({ overall, onlyFirst, onlySecond }: ReviewAgreement): string {
  if (overall.moments === 0) return 'Nothing was looked at in both, so there is nothing to compare yet.';
  const same = `Of ${overall.moments} moments that both looked at, ${share(overall.percent ?? 0)} were judged the same.`;
  const kappa =
    overall.kappa === null
      ? 'Kappa can’t be had: one of the two used a single weight throughout.'
      : `Beyond chance that is ${kappaBand(overall.kappa.value)} agreement (kappa ${two(overall.kappa.value)}; bands of Landis and Koch, 1977).`;
  const alone =
    onlyFirst + onlySecond === 0
      ? ''
      : ` ${onlyFirst} were looked at in the first alone, ${onlySecond} in the second alone.`;
  return `${same} ${kappa}${alone}`;
}

/** How far the two agree: over all, by criterion, by weight, with 95 % intervals. */
export function AgreementTable({ agreement, criteria }: AgreementTableProps) {
  const { overall, perCriterion, perWeight } = agreement;
  const nameOf = (id: string): string => criteria.find((one) => one.id === id)?.name ?? id;
  const row = (name: string, of: AgreementFigures) => (
    <tr key={name}>
      <th scope="row">{name}</th>
      <td className="figure end">{of.moments}</td>
      <td className="figure end">{of.percent === null ? '–' : share(of.percent)}</td>
      <td className="figure end">
        <Between estimate={of.kappa} />
      </td>
      <td className="figure end">
        <Between estimate={of.quadraticKappa} />
      </td>
      <td className="figure end">{two(of.ac1)}</td>
      <td className="figure end">{two(of.ordinalAlpha)}</td>
      <td className="figure end">
        <Between estimate={of.intraclass?.twoWayRandomSingle} />
      </td>
    </tr>
  );
  return (
    <section aria-label="How far they agree">
      <p data-testid="agreement-words">{inWords(agreement)}</p>
      <div className="agreement-scroll">
        <table className="agreement-table">
          <caption>By criterion, with 95 % intervals</caption>
          <thead>
            <tr>
              {['', 'Moments', 'Same', 'Kappa', 'Kappa, quadratic', 'AC1', 'Alpha, ordinal', 'ICC(2,1) of scores'].map(
                (label, place) => (
                  <th key={label} scope="col" className={place === 0 ? '' : 'end'}>
                    {label === '' ? <span className="visually-hidden">Criterion</span> : label}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {row('All', overall)}
            {perCriterion.map(({ criterion, figures }) => row(nameOf(criterion), figures))}
          </tbody>
        </table>
        <table className="agreement-table">
          <caption>By weight: whether both used it on the same moments</caption>
          <thead>
            <tr>
              <th scope="col">Weight</th>
              <th scope="col" className="end">
                Same
              </th>
              <th scope="col" className="end">
                Kappa
              </th>
              <th scope="col" className="end">
                AC1
              </th>
            </tr>
          </thead>
          <tbody>
            {perWeight.map(({ weight, figures }) => (
              <tr key={weight}>
                <th scope="row">
                  <Strokes weight={weight} named="elsewhere" /> {weight}
                </th>
                <td className="figure end">{figures.percent === null ? '–' : share(figures.percent)}</td>
                <td className="figure end">
                  <Between estimate={figures.kappa} />
                </td>
                <td className="figure end">{two(figures.ac1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
