import { keyTable } from '../../commands/keyTable.ts';
import type { KeyActs } from '../../commands/useKeys.ts';
import { redo, undo } from '../../shared/undoRedo.ts';
import { zoomStep } from '../model/pictureGeometry.ts';
import { layersState } from '../state/layersState.ts';
import { stripState } from '../state/stripState.ts';
import { zoomState } from '../state/zoomState.ts';
import { compareClip } from './compareAct.ts';
import { startCovering } from './coverActs.ts';
import { startDrawing } from './drawActs.ts';
import {
  chooseRepAtCursor,
  copyFlagOn,
  goToFlagAtCursor,
  mark,
  nameFaultAtCursor,
  removeAtCursor,
  toggleFine,
  writeNote,
} from './judgeActs.ts';
import { measureClip, measureSession, takeReps, togglePanel } from './measureActs.ts';
import { changeClip, move } from './moveActs.ts';
import {
  changeSpeed,
  markRange,
  showGhost,
  step,
  toggleBackwards,
  toggleLoop,
  togglePlay,
  toggleRange,
} from './pictureActs.ts';
import { markEdge, removeRepAtCursor } from './repActs.ts';
import { fineRest, goToUnseen } from './restActs.ts';
import { startSettingUp } from './setUpActs.ts';
import { answerByKey, changeSuggestion } from './suggestionActs.ts';

const panStepPx = 60;

/** What can be done in a session that is only read. */
const looking = new Set<string>([
  ...keyTable.filter(({ group, id }) => group === 'Picture' && id !== 'draw' && id !== 'cover').map(({ id }) => id),
  ...['cellLeft', 'cellRight', 'cellUp', 'cellDown', 'cellFirst', 'cellLast', 'goToFlag', 'panel'],
  ...['layerPath', 'layerDisc', 'layerJoints', 'layerCurves'],
]);

/** What the review's keys do. */
export const reviewKeys: KeyActs = {
  cellLeft: () => move('left'),
  cellRight: () => move('right'),
  cellUp: () => move('up'),
  cellDown: () => move('down'),
  cellFirst: () => move('first'),
  cellLast: () => move('last'),
  fine: () => void toggleFine(),
  keep: () => void mark('keep'),
  prefer: () => void mark('prefer'),
  adjust: () => void mark('adjust'),
  correct: () => void mark('correct'),
  stop: () => void mark('stop'),
  fineRest: () => void fineRest(),
  nextUnseen: goToUnseen,
  chooseRep: chooseRepAtCursor,
  copyFlag: () => void copyFlagOn(),
  nameFault: nameFaultAtCursor,
  note: writeNote,
  goToFlag: goToFlagAtCursor,
  remove: () => void removeAtCursor(),
  markStart: () => void markEdge('start'),
  markLongEnd: () => void markEdge('longEnd'),
  markEnd: () => void markEdge('end'),
  removeRep: () => void removeRepAtCursor(),
  measure: () => void measureClip(),
  measureAll: () => void measureSession(),
  panel: togglePanel,
  takeReps: () => void takeReps(),
  setUp: startSettingUp,
  nextSuggestion: () => changeSuggestion('next'),
  previousSuggestion: () => changeSuggestion('previous'),
  acceptSuggestion: () => answerByKey('accept'),
  dismissSuggestion: () => answerByKey('dismiss'),
  layerPath: () => layersState.getState().toggle('path'),
  layerDisc: () => layersState.getState().toggle('disc'),
  layerJoints: () => layersState.getState().toggle('joints'),
  layerCurves: () => layersState.getState().toggle('curves'),
  play: togglePlay,
  frameBack: (event) => step(-1, event),
  frameOn: (event) => step(1, event),
  framesBack: (event) => step(-10, event),
  framesOn: (event) => step(10, event),
  slower: () => changeSpeed('slower'),
  faster: () => changeSpeed('faster'),
  playBackwards: toggleBackwards,
  loop: toggleLoop,
  rangeFirst: () => markRange('first'),
  rangeLast: () => markRange('last'),
  loopRange: toggleRange,
  ghost: () => showGhost('shown'),
  draw: startDrawing,
  cover: startCovering,
  closer: () => zoomState.getState().zoomBy(zoomStep),
  further: () => zoomState.getState().zoomBy(1 / zoomStep),
  wholePicture: () => zoomState.getState().fit(),
  stripCloser: () => stripState.getState().zoom(2),
  stripFurther: () => stripState.getState().zoom(0.5),
  panLeft: () => zoomState.getState().pan({ x: panStepPx, y: 0 }),
  panRight: () => zoomState.getState().pan({ x: -panStepPx, y: 0 }),
  panUp: () => zoomState.getState().pan({ x: 0, y: panStepPx }),
  panDown: () => zoomState.getState().pan({ x: 0, y: -panStepPx }),
  compare: compareClip,
  previousClip: () => changeClip('previous'),
  nextClip: () => changeClip('next'),
  undo: () => void undo(),
  redo: () => void redo(),
};

/** What they do in a session that came from another desk. */
export const lookingKeys: KeyActs = Object.fromEntries(Object.entries(reviewKeys).filter(([id]) => looking.has(id)));
