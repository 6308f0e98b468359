import type { ReviewAgreement } from '../../engine/agreement/compareReviews.ts';
import { kappaBand } from '../../engine/agreement/kappa.ts';
import { counted, share } from '../base/figures.ts';
import { two } from './Between.tsx';

/** The figures over all in two or three sentences. */
export function inWords({ overall, onlyFirst, onlySecond }: ReviewAgreement): string {
  if (overall.moments === 0) return 'Nothing was looked at in both, so there is nothing to compare yet.';
  const verb = overall.moments === 1 ? 'was' : 'were';
  const same = `Of ${counted(overall.moments, 'moment')} that both looked at, ${share(overall.percent ?? 0)} ${verb} judged the same.`;
  const kappa =
    overall.kappa === null
      ? 'Kappa can’t be had: both used one and the same weight throughout.'
      : `Beyond chance that is ${kappaBand(overall.kappa.value)} agreement (kappa ${two(overall.kappa.value)}; bands of Landis and Koch, 1977).`;
  const alone =
    onlyFirst + onlySecond === 0
      ? ''
      : ` Left out, because one alone looked: ${onlyFirst} in the first, ${onlySecond} in the second.`;
  return `${same} ${kappa}${alone}`;
}
