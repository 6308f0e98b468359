import { type Block, emphasis, type RacksideDocument } from '../document/document.ts';
import type { Caution } from '../exercises/catalogue.ts';
import type { LetterPlan } from '../letter/letterPlan.ts';
import type { Speaker } from '../letter/speaker.ts';
import { cautionsNotice, writeAllCautions, writeOwnCautions, writeTopNotices } from '../letter/writeNotices.ts';
import { cautionWording, sayerOf } from '../wording/wordings.ts';

/** What every document of a session says where the work can hurt. */
export type SessionNotices = {
  /** Pain and what was unsafe, in the letter's words: before anything else. */
  readonly top: readonly Block[];
  /** All cautions that apply; and those of this session alone, without what goes with everything. */
  readonly cautions: readonly Block[];
  readonly ownCautions: readonly Block[];
  /** "Coaching opinion from video; not medical advice." */
  readonly closing: Block;
};

/** The notices of a session, in the words of its letter. */
export const noticesOf = (plan: LetterPlan, speaker: Speaker): SessionNotices => ({
  top: writeTopNotices(plan, speaker),
  cautions: writeAllCautions(plan, speaker),
  ownCautions: writeOwnCautions(plan, speaker),
  closing: closingLine(speaker),
});

/** The notices of something that is written for nobody in particular. */
export const generalNotices = (cautions: readonly Caution[], speaker: Speaker): SessionNotices => ({
  top: [],
  cautions: cautionsNotice(cautions, speaker),
  ownCautions: [],
  closing: closingLine(speaker),
});

const closingLine = ({ language }: Speaker): Block => ({
  kind: 'paragraph',
  id: 'closing',
  inlines: [emphasis(sayerOf(cautionWording, language)('closing'))],
  fixed: true,
});

/**
 * A document between the notices of its session; one that is to fit a page has those cautions that are of this session.
 * One that names its basis, with the closing line in it, keeps that last.
 */
export function withNotices(document: RacksideDocument, notices: SessionNotices): RacksideDocument {
  const { top, closing } = notices;
  const cautions = document.fits === undefined ? notices.cautions : notices.ownCautions;
  const isBasis = ({ id }: Block): boolean => id === 'basis';
  const basis = document.blocks.filter(isBasis);
  const body = document.blocks.filter((block) => !isBasis(block));
  return { ...document, blocks: [...top, ...body, ...cautions, ...(basis.length === 0 ? [closing] : basis)] };
}
