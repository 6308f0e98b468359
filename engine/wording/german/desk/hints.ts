import type { HintMessageId } from '../../english/desk/hints.ts';

export const hints: Readonly<Record<HintMessageId, string>> = {
  hint: 'Tipp',
  step: '{back} und {on} gehen Bild für Bild; {play} spielt ab, {backwards} spielt rückwärts.',
  mark: '{left} {up} {down} {right} gehen durch die Wertungskarte. {prefer}, {adjust}, {correct} und {stop} markieren Fehler, {keep} lobt, {fine} hakt ab.',
  rest: '{rest} hakt alles ab, was noch offen ist; {next} geht zum nächsten offenen Feld.',
  measure: '{measure} misst diesen Clip, {all} alle Clips der Einheit; {panel} zeigt Messwerte und Vorschläge.',
  find: '{palette} findet jede Aktion beim Namen; {sheet} zeigt alle Tasten, dort lassen sie sich auch ändern.',
  next: 'Nächster Tipp',
  noMore: 'Keine Tipps mehr',
};
