import { open, stat } from 'node:fs/promises';
import path from 'node:path';
import { parseReview, rubricVersionOf } from '../../../engine/review/parseReview.ts';
import type { Review } from '../../../engine/review/review.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { JudgingData } from '../catalogue/loadCatalogue.ts';

const mostBytes = 5_000_000;

/**
 * Reads a review file and checks it against the review format and the judging data of the rubric version it names; of
 * the first where it names none.
 *
 * Throws a ProblemError with one sentence: `not-found` when there is no such file, `bad-review` when it is too large,
 * not text, not JSON or not a review. Nothing is ever changed.
 */
export async function readReviewFile(filePath: string, judging: JudgingData): Promise<Review> {
  const shownName = shownNameOf(filePath);
  return reviewOfText(decode(await readCapped(filePath, shownName), shownName), shownName, judging);
}

const shownNameOf = (filePath: string): string => path.basename(filePath).replaceAll(/\p{C}/gu, '').slice(0, 100);

/**
 * The same for the text of a review file that was read already. Throws `bad-review` when it is not JSON or not a review.
 * @param fileName how it was called, for the sentence
 */
export function reviewOfText(text: string, fileName: string, judging: JudgingData): Review {
  const shownName = shownNameOf(fileName);
  const input = parseJson(text, shownName);
  const asked = rubricVersionOf(input);
  const known = judging.rubricVersions().find((version) => version === asked);
  const parsed = parseReview(input, judging.catalogue(known), judging.rubricVersions());
  if (!parsed.ok) throw new ProblemError('bad-review', 'asWritten', { sentence: parsed.sentence });
  return parsed.review;
}

async function readCapped(filePath: string, shownName: string): Promise<Uint8Array> {
  const missing = (cause: unknown) => {
    throw new ProblemError('not-found', 'reviewNotOpened', { file: shownName }, { cause });
  };
  // Looked at before it is opened: opening a pipe would wait for whoever writes into it.
  const kind = await stat(filePath).catch(missing);
  if (!kind.isFile()) {
    throw new ProblemError('bad-review', 'reviewNoFile', { file: shownName });
  }
  const file = await open(filePath, 'r').catch(missing);
  try {
    const facts = await file.stat();
    if (facts.size > mostBytes) {
      throw new ProblemError('bad-review', 'reviewTooLarge', { file: shownName });
    }
    return await file.readFile();
  } finally {
    await file.close();
  }
}

function decode(bytes: Uint8Array, shownName: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    throw new ProblemError(
      'bad-review',
      'reviewNotText',
      { file: shownName },
      {
        cause: error,
      },
    );
  }
}

function parseJson(text: string, shownName: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new ProblemError(
      'bad-review',
      'reviewNotJson',
      { file: shownName },
      {
        cause: error,
      },
    );
  }
}
