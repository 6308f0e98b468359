/** Words for a kappa (Landis & Koch 1977, Biometrics 33:159): a convention, not a verdict. */
export function kappaBand(kappa: number): 'poor' | 'slight' | 'fair' | 'moderate' | 'substantial' | 'almost perfect' {
  if (kappa < 0) return 'poor';
  if (kappa <= 0.2) return 'slight';
  if (kappa <= 0.4) return 'fair';
  if (kappa <= 0.6) return 'moderate';
  if (kappa <= 0.8) return 'substantial';
  return 'almost perfect';
}
