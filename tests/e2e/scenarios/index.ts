import type { Scenario } from '../harness/scenario.ts';
import { accessibility } from './accessibility.ts';
import { arranging } from './arranging.ts';
import { cameras } from './cameras.ts';
import { compare } from './compare.ts';
import { covers } from './covers.ts';
import { deb } from './deb/index.ts';
import { firstStart } from './firstStart.ts';
import { flagging } from './flagging.ts';
import { flow } from './flow.ts';
import { framing } from './framing.ts';
import { handover } from './handover.ts';
import { inbox } from './inbox.ts';
import { layout } from './layout/index.ts';
import { letter, letterInOwnWords } from './letter.ts';
import { look } from './look.ts';
import { measure } from './measure.ts';
import { narratedMinute, narration } from './narration.ts';
import { night } from './night.ts';
import { overlays } from './overlays.ts';
import { readmePictures } from './readmePictures.ts';
import { recovery } from './recovery.ts';
import { scorecard } from './scorecard.ts';
import { secondLook } from './secondLook.ts';
import { security } from './security/index.ts';
import { seeking, seekingLong } from './seeking.ts';
import { spoken } from './spoken/index.ts';
import { stage } from './stage.ts';
import { startPage } from './startPage.ts';
import { stepping } from './stepping.ts';
import { strip } from './strip.ts';

/** The longest first, so that no lane waits for one at the end. */
export const scenarios: readonly Scenario[] = [
  deb,
  startPage,
  look,
  handover,
  stepping,
  layout,
  security,
  measure,
  seeking,
  recovery,
  inbox,
  arranging,
  accessibility,
  spoken,
  covers,
  night,
  narration,
  scorecard,
  firstStart,
  letterInOwnWords,
  letter,
  stage,
  overlays,
  flagging,
  flow,
  framing,
  cameras,
  secondLook,
  compare,
  strip,
];

/** What is run when it is named, and not with all others. */
export const onRequest: readonly Scenario[] = [readmePictures, narratedMinute, seekingLong];
