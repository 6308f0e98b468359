import type { StripMessageId } from '../../english/desk/strip.ts';

export const strip: Readonly<Record<StripMessageId, string>> = {
  position: 'Stelle im Clip',
  frameAt: 'Bild {frame}, {time}',
  edge: '{edge, select, start {Beginn} end {Ende} other {Umkehrpunkt in der Dehnung}}, Wiederholung {rep}',
  edgeAt: 'Bild {frame}, {time}{set, select, measured {, gemessen} byHand {, von Hand gesetzt} other {}}',
  noReps: 'Noch keine Wiederholungen: {start} setzt Beginn, {stretched} Umkehrpunkt, {end} Ende',
  goToFlag: 'Zur Bemerkung: {severity}, {criterion}, {reps}, {time}',
  goToSuggestion: 'Zum Vorschlag: {severity}, {criterion}, {reps}, {time}',
  dragFlag: 'An eine andere Stelle ziehen',
  height: 'Höhe',
  speed: 'Geschwindigkeit',
  betweenReps: 'zwischen zwei Wiederholungen',
  phaseAt: 'Wdh. {rep}, {phase}',
  phaseFor: 'Wdh. {rep}, {phase} {seconds} s',
  heightAt: 'Höhe {sure, select, no {etwa } other {}}{centimetres} cm',
  speedAt: 'Geschwindigkeit {sure, select, no {etwa } other {}}{metresPerSecond} m/s',
  notVisible: 'nicht zu sehen',
  phases: 'Phasen jeder Wiederholung',
  repPhases: 'Wiederholung {rep}: {phases}',
  phaseSpan: '{phase} von {from} bis {to}',
  notCounted: 'Nicht gezählt, von {from} bis {to}: {doubts}',
};
