import * as v from 'valibot';
import { settingsSchema } from '../../../electron/contract/settings.ts';

/** What is set where nobody has set anything. */
export const usualSettings = v.parse(settingsSchema, {});
