import type { Scenario } from '../harness/scenario.ts';
import { firstStart } from './firstStart.ts';
import { scorecard } from './scorecard.ts';
import { security } from './security/index.ts';
import { stepping } from './stepping.ts';

export const scenarios: readonly Scenario[] = [firstStart, scorecard, stepping, security];
