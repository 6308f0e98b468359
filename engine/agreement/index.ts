export { alignReviews } from './alignReviews.ts';
export { kappaBand } from './bands.ts';
export {
  type AgreementFigures,
  compareReviews,
  type JudgedMoment,
  type ReviewAgreement,
  type Verdict,
  type WeightFigures,
} from './compareReviews.ts';
export { fProbability, fQuantile } from './fDistribution.ts';
export { type FleissKappa, fleissKappa } from './fleissKappa.ts';
export { type IntraclassCorrelation, intraclassCorrelation } from './intraclass.ts';
export {
  cohenKappa,
  countPairs,
  type Estimate,
  gwetAc1,
  type KappaWeights,
  percentAgreement,
  shareInterval,
} from './kappa.ts';
export { krippendorffAlpha, type MeasurementLevel } from './krippendorffAlpha.ts';
