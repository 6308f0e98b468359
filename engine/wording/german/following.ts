import type { followedBecause as englishBecause, followedParts as englishParts } from '../english/following.ts';

/** Was in einem Clip verfolgt wird und warum. */
export const followed = 'Verfolgt: {part}, denn {because}.';

export const followedParts: Readonly<Record<keyof typeof englishParts, string>> = {
  disc: 'die vordere Scheibe',
  point: 'der angeklickte Punkt',
  hands: 'die Hände',
  shoulders: 'die Schultern',
  hips: 'die Hüften',
  head: 'der Kopf',
  legs: 'die Knie und Knöchel',
  nothing: 'nichts',
};

export const followedBecause: Readonly<Record<keyof typeof englishBecause, string>> = {
  clicked: 'dein Coach hat darauf geklickt',
  chosen: 'dein Coach hat es so gewählt',
  discMovesWithLifter: 'sie bewegt sich mit dir',
  discUnchecked: 'zum Abgleich war nichts anderes zu sehen',
  noDisc: 'es wurde keine Scheibe gefunden, die sich mit dir bewegt',
  discStandsStill: 'die gefundene Scheibe steht still, während du dich bewegst',
  discMovesOtherwise: 'die gefundene Scheibe bewegt sich anders als du',
  discSeldomSeen: 'die Scheibe ist während der Übung zu lange verdeckt',
  discOfUnlikelySize: 'nach der gefundenen Scheibe wärst du viel zu groß oder zu klein',
  noDiscExpected: 'bei dieser Übung gibt es keine Scheibe, die man verfolgen könnte',
  nothingSeen: 'weder eine Scheibe noch du konnten verfolgt werden',
};
