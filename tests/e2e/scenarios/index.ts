import type { Scenario } from '../harness/scenario.ts';
import { security } from './security/index.ts';

export const scenarios: readonly Scenario[] = [security];
