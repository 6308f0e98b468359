import {
  type IntraclassForm,
  type IntraclassForms,
  intraclassCorrelation,
} from '../../../engine/agreement/intraclass.ts';
import type { Estimate } from '../../../engine/agreement/kappa.ts';

/** The six forms of a table that has them. */
export function formsOf(scores: readonly (readonly number[])[]): IntraclassForms {
  const result = intraclassCorrelation(scores);
  if (result.kind !== 'estimated') throw new Error(`no forms: ${result.kind}`);
  return result;
}

/** The estimate of a form that can be told. */
export function known(form: IntraclassForm): Estimate {
  if (form.kind !== 'known') throw new Error('too few to tell');
  return form;
}
