import type {
  followedBecauseForCoach as englishBecause,
  lostForCoach as englishLost,
  warningsForCoach as englishWarnings,
} from '../english/measuringForCoach.ts';

/** Wovor ein Messwert warnt, gesagt zur Person am Rechner, die etwas daran ändern kann. */
export const warningsForCoach: Readonly<Record<keyof typeof englishWarnings, string>> = {
  tooFewFrames: 'Der Clip hat {frames} Bilder; das ist zu wenig, um eine Wiederholung zu finden.',
  fewFramesPerSecond:
    'Der Clip hat etwa {framesPerSecond} Bilder pro Sekunde; Phasen sind daher bestenfalls auf ein Bild genau, also auf {seconds, number, ::.00} s.',
  fromBody:
    'Wiederholungen und Tempo sind am Körper abgelesen, was ungenauer ist als an einer Scheibe. Längen und Geschwindigkeiten fehlen, weil nie jemand aufrecht von Kopf bis Fuß zu sehen ist.',
  aboutFromBody:
    'Wiederholungen und Tempo sind am Körper abgelesen, was ungenauer ist als an einer Scheibe. Längen und Geschwindigkeiten sind mit „etwa“ angegeben: Sie gehen von einem Erwachsenen mittlerer Größe aus und sind bestenfalls auf ± {percent} % genau. Eine Abweichung fehlt.',
  lengthsFromBody: 'Alles ist am Körper abgelesen, was ungenauer ist als an einer Scheibe.',
  noScale:
    'Es gibt keinen Maßstab, daher fehlen Längen und Geschwindigkeiten; gib die Länge von etwas in der Ebene der Last an.',
  farOffAxis: 'Die Kamera steht um {degrees}° schräg, daher fehlt die Abweichung nach vorn und hinten.',
  offAxis: 'Die Kamera steht um etwa {degrees}° schräg; waagerechte Werte sind dafür korrigiert und weniger sicher.',
  notFromSide:
    'Der Clip ist nicht von der Seite gefilmt, daher fehlen Gelenkwinkel und die Abweichung nach vorn und hinten.',
  nothingUpright:
    'Im Raum war nichts Senkrechtes zu finden, daher gilt die Kamera als gerade; zeichne ein Lot an einem Pfosten ein.',
  facingUnknown: 'Die Blickrichtung ist nicht bekannt, daher fehlt die Abweichung; gib sie an.',
  hold: 'Eine Halteübung hat keine Wiederholungen; ihre Dauer ergibt sich aus Beginn und Ende, die von Hand markiert werden.',
  noRep: 'Nichts, was verfolgt wurde, bewegt sich hin und her wie bei einer Wiederholung; daher wurde keine gefunden.',
  unlikelyHeight:
    'Mit diesem Maßstab käme eine Körpergröße von {metres, number, ::.0} m heraus; prüf, ob es die richtige Scheibe ist und ob ihr Durchmesser stimmt.',
  cameraMoves:
    'Die Kamera bewegt sich, und der Hintergrund zeigt zu wenig, um das herauszurechnen; daher fehlen Höhen, Abweichung und Geschwindigkeiten.',
  noDisc:
    'Es wurde keine Scheibe gefunden, die sich mit der Last bewegt; klick die Mitte der vorderen Scheibe in einem Bild an, das sie ganz zeigt.',
  discLost:
    'Die Scheibe ist in {lost} von {frames} Bildern nicht zu sehen; klick sie dort an, wo sie verloren geht, falls sie zu sehen ist.',
  discDoubtful:
    'Die Lage der Scheibe ist in {doubtful} von {frames} Bildern unsicher; klick zur Sicherheit ihre Mitte an.',
  noRimAtClick: 'Um den Klick in Bild {frame} ist kein Scheibenrand zu sehen; der Klick wurde nicht verwendet.',
  pointLost:
    'Der Punkt ist in {lost} von {frames} Bildern nicht zu erkennen; klick ihn dort noch einmal an, wo er verloren geht.',
  nobodyAtClick:
    'Beim Klick in Bild {frame} wurde niemand gefunden; der Klick wurde nicht verwendet. Klick die Mitte des Rumpfs in einem Bild an, das ihn ganz zeigt.',
  nobodySeen:
    'In diesem Clip war niemand zu sehen, daher gibt es keine Gelenke; film von der Seite, mit dem ganzen Körper im Bild.',
  seldomSeen:
    'Der Körper war nur in {percent} % des Clips zu sehen, sonst fehlen die Gelenke; film von der Seite, mit dem ganzen Körper im Bild.',
};

/** Warum einer Wiederholung Gelenkwinkel fehlen. */
export const unseenForCoach =
  '{part, select, nose {Das Gesicht} ear {Der Kopf} shoulder {Die Schulter} elbow {Der Ellbogen} wrist {Das Handgelenk} hip {Die Hüfte} knee {Das Knie} other {Das Sprunggelenk}} {why, select, behindDisc {ist hinter der Scheibe} outOfFrame {ist am Bildrand oder außerhalb} other {ist nicht zu erkennen}}; nicht messbar: {lost}.';

export const lostForCoach: Readonly<Record<keyof typeof englishLost, string>> = {
  knee: 'der Kniewinkel',
  hip: 'der Hüftwinkel',
  trunkLean: 'die Vorneigung',
  head: 'die Kopfhaltung zum Rumpf',
};

/** Warum etwas verfolgt wird, gesagt zur Person am Rechner. */
export const followedBecauseForCoach: Readonly<Record<keyof typeof englishBecause, string>> = {
  clicked: 'es wurde angeklickt',
  chosen: 'es wurde so gewählt',
  discMovesWithLifter: 'sie bewegt sich mit der Last',
  discUnchecked: 'zum Abgleich war nichts anderes zu sehen',
  noDisc:
    'es wurde keine Scheibe gefunden, die sich mit der Last bewegt; klick die Mitte der vorderen Scheibe in einem Bild an, das sie ganz zeigt',
  discStandsStill: 'die gefundene Scheibe steht beim Heben still; klick die richtige an, falls sie zu sehen ist',
  discMovesOtherwise:
    'die gefundene Scheibe bewegt sich nicht mit der Last; klick die richtige an, falls sie zu sehen ist',
  discSeldomSeen:
    'die Scheibe ist beim Heben zu lange verdeckt; klick sie dort an, wo sie verloren geht, falls sie zu sehen ist',
  discOfUnlikelySize:
    'nach der gefundenen Scheibe wäre die Körpergröße viel zu groß oder zu klein; prüf ihren Durchmesser',
  noDiscExpected: 'bei dieser Übung gibt es keine Scheibe, die man verfolgen könnte',
  nothingSeen: 'weder eine Scheibe noch ein Körper ließ sich verfolgen',
};
