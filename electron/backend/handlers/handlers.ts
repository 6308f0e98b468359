import type { RequestName } from '../../contract/requests.ts';
import { getAbout, getNotices } from './about.ts';
import { listActs, redoAct, undoAct } from './acts.ts';
import { compareSessionsOfLibrary, compareWithFile } from './agreement.ts';
import {
  finishSession,
  getPlaces,
  mergeEntries,
  mergeSessions,
  moveClip,
  moveEntry,
  moveSession,
  renameSession,
} from './arranging.ts';
import {
  deleteBinned,
  emptyWholeBin,
  listBinned,
  redoDesk,
  removeClip,
  removeEntry,
  removeSession,
  restoreBinned,
  undoDesk,
} from './bin.ts';
import { bringIn } from './bringIn.ts';
import { pairCameras, partCameras } from './cameras.ts';
import { getFrameTable, importClips, listAlike, resolveMedia, updateClip } from './clips.ts';
import { copyFlag } from './copyFlag.ts';
import { addCover, placeCover, removeCover, removeCoverPlace, updateCover } from './covers.ts';
import { getDeskSession, listDeskSessions, listDeskTrainees } from './desk.ts';
import { previewDocument, writeDocument } from './documents.ts';
import { addDrawing, removeDrawing, updateDrawing } from './drawings.ts';
import { addEntry, updateEntry } from './entries.ts';
import { addFlag, removeFlag, updateFlag } from './flags.ts';
import { frameClip } from './framing.ts';
import { getGrade, overrideGrade } from './grades.ts';
import type { Handler } from './handler.ts';
import { getToHandOver, listHandedOver, listToHandOver, startHandover, writeKept } from './handover.ts';
import {
  chooseForFiles,
  countFiles,
  findInboxPicture,
  getInbox,
  putFilesBack,
  readFilesAgain,
  removeFiles,
  takeIn,
} from './inbox.ts';
import { cancelJob, dismissJobs, getLine, listAllJobs, moveJob, retryJob } from './jobs.ts';
import {
  addParagraph,
  bringParagraphBack,
  leaveParagraphOut,
  moveParagraph,
  removeParagraph,
} from './letterParagraphs.ts';
import { editLetter, getLetter, getSentLetter, sendLetter, setLetterStyle } from './letters.ts';
import {
  addDemo,
  createNewLibrary,
  getCatalogue,
  getLibraryState,
  listDamage,
  verifyWholeLibrary,
  writeProblemReport,
} from './library.ts';
import {
  addClick,
  addOffered,
  changeSetUp,
  clearClicks,
  getMeasures,
  getRecording,
  markMeasured,
  startMeasuring,
} from './measures.ts';
import { decideNames, listNameDoubts } from './names.ts';
import {
  appendToNarration,
  beginNarration,
  getNarration,
  keepRecorded,
  removeNarration,
  startRendering,
} from './narrations.ts';
import { findNext, tellLeft } from './night.ts';
import { discardParked, getParked } from './parked.ts';
import { markRep, moveEdge, removeRep } from './reps.ts';
import { getReview, importReview, listFootageOutside, setPosition } from './reviews.ts';
import { compareSecondLook, getSecondLook, startSecondLook } from './secondLook.ts';
import { splitClip, trimClip } from './sections.ts';
import { addSession, discardSession, rejudgeSession, updateSession } from './sessions.ts';
import { changeSettings, getDamagedSettings, getSettings } from './settings.ts';
import { acceptSuggestion, dismissSuggestion } from './suggestions.ts';
import { setManyTicks, setTicks } from './ticks.ts';
import { addTrainee, getTraineeHistory, getTraineeSpeeds, setNames, updateTrainee } from './trainees.ts';

/** Who answers which request. */
export const handlers: { readonly [N in RequestName]: Handler<N> } = {
  'about.get': getAbout,
  'about.notices': getNotices,
  'library.state': getLibraryState,
  'library.create': createNewLibrary,
  'library.damage': listDamage,
  'library.verify': verifyWholeLibrary,
  'report.write': writeProblemReport,
  'library.addDemo': addDemo,
  'catalogue.get': getCatalogue,
  'desk.sessions': listDeskSessions,
  'desk.session': getDeskSession,
  'desk.trainees': listDeskTrainees,
  'trainees.add': addTrainee,
  'trainees.update': updateTrainee,
  'sessions.add': addSession,
  'sessions.update': updateSession,
  'sessions.discard': discardSession,
  'sessions.remove': removeSession,
  'sessions.move': moveSession,
  'sessions.finish': finishSession,
  'sessions.merge': mergeSessions,
  'sessions.rename': renameSession,
  'sessions.places': getPlaces,
  'entries.move': moveEntry,
  'entries.merge': mergeEntries,
  'clips.move': moveClip,
  'bin.list': listBinned,
  'bin.delete': deleteBinned,
  'bin.empty': emptyWholeBin,
  'bin.restore': restoreBinned,
  'desk.redo': redoDesk,
  'desk.undo': undoDesk,
  'parked.get': getParked,
  'parked.discard': discardParked,
  'entries.add': addEntry,
  'entries.update': updateEntry,
  'entries.remove': removeEntry,
  'clips.import': importClips,
  'clips.update': updateClip,
  'clips.frame': frameClip,
  'clips.trim': trimClip,
  'clips.split': splitClip,
  'clips.remove': removeClip,
  'clips.frameTable': getFrameTable,
  'inbox.get': getInbox,
  'inbox.count': countFiles,
  'inbox.take': takeIn,
  'inbox.choose': chooseForFiles,
  'inbox.bringIn': bringIn,
  'inbox.remove': removeFiles,
  'inbox.putBack': putFilesBack,
  'inbox.readAgain': readFilesAgain,
  'inbox.picture': findInboxPicture,
  'review.get': getReview,
  'reviews.footageOutside': listFootageOutside,
  'reviews.import': importReview,
  'position.set': setPosition,
  'cameras.pair': pairCameras,
  'cameras.part': partCameras,
  'reps.mark': markRep,
  'reps.remove': removeRep,
  'reps.moveEdge': moveEdge,
  'flags.add': addFlag,
  'flags.update': updateFlag,
  'flags.copy': copyFlag,
  'flags.remove': removeFlag,
  'drawings.add': addDrawing,
  'drawings.update': updateDrawing,
  'drawings.remove': removeDrawing,
  'covers.add': addCover,
  'covers.place': placeCover,
  'covers.update': updateCover,
  'covers.removePlace': removeCoverPlace,
  'covers.remove': removeCover,
  'ticks.set': setTicks,
  'ticks.setMany': setManyTicks,
  'history.undo': undoAct,
  'history.redo': redoAct,
  'history.list': listActs,
  'grade.get': getGrade,
  'grades.override': overrideGrade,
  'sessions.rejudge': rejudgeSession,
  'clips.alike': listAlike,
  'secondLook.start': startSecondLook,
  'secondLook.get': getSecondLook,
  'secondLook.compare': compareSecondLook,
  'agreement.compare': compareSessionsOfLibrary,
  'agreement.compareFile': compareWithFile,
  'trainees.history': getTraineeHistory,
  'trainees.speeds': getTraineeSpeeds,
  'letters.get': getLetter,
  'letters.style': setLetterStyle,
  'letters.edit': editLetter,
  'letters.add': addParagraph,
  'letters.leaveOut': leaveParagraphOut,
  'letters.bringBack': bringParagraphBack,
  'letters.remove': removeParagraph,
  'letters.move': moveParagraph,
  'letters.send': sendLetter,
  'letters.sent': getSentLetter,
  'documents.preview': previewDocument,
  'documents.write': writeDocument,
  'measures.start': startMeasuring,
  'measures.get': getMeasures,
  'measures.recording': getRecording,
  'measures.setUp': changeSetUp,
  'measures.click': addClick,
  'measures.clearClicks': clearClicks,
  'measures.markReps': markMeasured,
  'measures.addOffered': addOffered,
  'suggestions.accept': acceptSuggestion,
  'suggestions.dismiss': dismissSuggestion,
  'handover.start': startHandover,
  'handover.list': listHandedOver,
  'handover.sessions': listToHandOver,
  'handover.session': getToHandOver,
  'handover.writeKept': writeKept,
  'trainees.names': setNames,
  'jobs.list': listAllJobs,
  'jobs.cancel': cancelJob,
  'jobs.retry': retryJob,
  'jobs.dismiss': dismissJobs,
  'jobs.line': getLine,
  'jobs.move': moveJob,
  'names.doubts': listNameDoubts,
  'names.decide': decideNames,
  'night.next': findNext,
  'night.left': tellLeft,
  'settings.damaged': getDamagedSettings,
  'settings.get': getSettings,
  'settings.change': changeSettings,
  'narrations.get': getNarration,
  'narrations.begin': beginNarration,
  'narrations.append': appendToNarration,
  'narrations.keep': keepRecorded,
  'narrations.remove': removeNarration,
  'narrations.render': startRendering,
  'media.resolve': resolveMedia,
};
