import type { Language } from '../language/language.ts';
import type { Message } from '../message/message.ts';
import { jobWords as english } from './english/jobWords.ts';
import { jobWords as german } from './german/jobWords.ts';
import { sayProblem } from './sayProblem.ts';
import { sayerOf } from './wordings.ts';

/** What jobs are called, and what they can be doing. */
export type JobWordId = keyof typeof english;

/** What a job is doing. */
export type JobStep = Message<JobWordId>;

/** A step by itself. */
export const step = (id: JobWordId, values: Message['values'] = {}): JobStep => ({ id, values });

/** A step with the clip that it is about. */
export const stepOf = (clip: string, { id, values }: JobStep): JobStep => ({
  id,
  values: { ...values, named: 'yes', clip },
});

const isJobWord = (id: string): id is JobWordId => Object.hasOwn(english, id);

/** What a job is called, what it is doing, or why it failed, in a language. */
export function sayJob({ id, values }: Message, language: Language): string {
  if (!isJobWord(id)) return sayProblem({ id, values }, language);
  return sayerOf({ en: english, de: german }, language)(id, { named: 'no', clip: '', ...values });
}
