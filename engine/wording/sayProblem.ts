import type { Language } from '../language/language.ts';
import type { Message } from '../message/message.ts';
import { handover as englishHandover } from './english/problems/handover.ts';
import { judging as englishJudging } from './english/problems/judging.ts';
import { library as englishLibrary } from './english/problems/library.ts';
import { media as englishMedia } from './english/problems/media.ts';
import { requests as englishRequests } from './english/problems/requests.ts';
import { reviewFiles as englishReviewFiles } from './english/problems/reviewFiles.ts';
import { sessions as englishSessions } from './english/problems/sessions.ts';
import { handover as germanHandover } from './german/problems/handover.ts';
import { judging as germanJudging } from './german/problems/judging.ts';
import { library as germanLibrary } from './german/problems/library.ts';
import { media as germanMedia } from './german/problems/media.ts';
import { requests as germanRequests } from './german/problems/requests.ts';
import { reviewFiles as germanReviewFiles } from './german/problems/reviewFiles.ts';
import { sessions as germanSessions } from './german/problems/sessions.ts';
import { sayerOf } from './wordings.ts';

const english = {
  ...englishRequests,
  ...englishLibrary,
  ...englishSessions,
  ...englishJudging,
  ...englishMedia,
  ...englishHandover,
  ...englishReviewFiles,
} as const;

/** The problems that can be told. */
export type ProblemId = keyof typeof english;

const german: Readonly<Record<ProblemId, string>> = {
  ...germanRequests,
  ...germanLibrary,
  ...germanSessions,
  ...germanJudging,
  ...germanMedia,
  ...germanHandover,
  ...germanReviewFiles,
};

/** Whether a message that came from another process, or was stored, is one of these. */
export const isProblemId = (id: string): id is ProblemId => Object.hasOwn(english, id);

/** What a problem says in a language: what happened, what is safe, what to do. One that isn't known is told as unforeseen. */
export function sayProblem({ id, values }: Message, language: Language): string {
  const say = sayerOf({ en: english, de: german }, language);
  return isProblemId(id) ? say(id, values) : say('unforeseen');
}
