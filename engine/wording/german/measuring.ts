import type { MeasuringMessageId } from '../../motion/suggestion.ts';

const also =
  '{alsoCount, plural, =0 {} one { Wiederholung {alsoReps} zeigt das auch.} other { Die Wiederholungen {alsoReps} zeigen das auch.}}';
const verb = '{verb, select, lowers {Absenken} other {Rückweg}}';
const theVerb = '{verb, select, lowers {Das Absenken} other {Der Rückweg}}';
const where = '{where, select, bottom {unten} top {oben} stretchedEnd {in der Dehnung} other {in der Verkürzung}}';
const asked =
  '{asked, select, targetExactly {Vorgabe: {askedToS, number, ::.#} s} targetAtMost {Vorgabe: höchstens {askedToS, number, ::.#} s} targetBetween {Vorgabe: {askedFromS, number, ::.#} bis {askedToS, number, ::.#} s} planNone {der Plan sieht keine vor} other {der Plan sieht {askedToS, number, ::.#} s vor}}';
const about = '{about, select, yes {etwa } other {}}';
const seconds = `${about}{value, number, ::.0} s ± {within, number, ::.0} s`;
const otherSeconds = `${about}{otherValue, number, ::.0} s ± {otherWithin, number, ::.0} s`;
const centimetres = `${about}{value} cm ± {within} cm`;
const otherCentimetres = `${about}{otherValue} cm ± {otherWithin} cm`;
const percent = `${about}{value} % ± {within} %`;
const every = '{reps, plural, one {Die Wiederholung} other {Jede Wiederholung}}';
const fromTo = `${about}{fromS, number, ::.0}{spread, select, none {} other { bis {toS, number, ::.0}}} s{within, plural, =0 {} other { ± {within, number, ::.0} s}}`;

/** What measures warn of, said to the trainee, and what suggestions say. */
export const measuring = {
  tooFewFrames: 'Der Clip hat {frames} Bilder; das ist zu wenig, um eine Wiederholung zu finden.',
  fewFramesPerSecond:
    'Der Clip hat etwa {framesPerSecond} Bilder pro Sekunde; Phasen sind daher bestenfalls auf {seconds, number, ::.00} s genau.',
  fromBody:
    'Wiederholungen und Tempo sind am Körper abgelesen, was ungenauer ist als an einer Scheibe; Strecken und Geschwindigkeiten werden nicht genannt.',
  aboutFromBody:
    'Wiederholungen und Tempo sind am Körper abgelesen, was ungenauer ist als an einer Scheibe. Strecken und Geschwindigkeiten sind mit „etwa“ angegeben: Sie gehen von einem Erwachsenen mittlerer Größe aus und sind bestenfalls auf ± {percent} % genau.',
  lengthsFromBody: 'Alles ist am Körper abgelesen, was ungenauer ist als an einer Scheibe.',
  noScale: 'Nichts von bekannter Länge war zu sehen; Strecken und Geschwindigkeiten werden daher nicht genannt.',
  farOffAxis: 'Die Kamera steht um {degrees}° schräg; die Abweichung nach vorn und hinten wird daher nicht genannt.',
  offAxis: 'Die Kamera steht um etwa {degrees}° schräg; waagerechte Werte sind deshalb korrigiert und weniger sicher.',
  notFromSide:
    'Der Clip ist nicht von der Seite gefilmt; Abweichung nach vorn und hinten sowie Gelenkwinkel werden daher nicht genannt.',
  nothingUpright: 'Im Raum war nichts Senkrechtes zu finden; die Kamera gilt daher als waagerecht.',
  facingUnknown:
    'In welche Richtung du schaust, war nicht zu erkennen; die Abweichung nach vorn und hinten wird daher nicht genannt.',
  hold: 'Eine Halteübung hat keine Wiederholungen.',
  noRep: 'Nichts, was verfolgt wurde, bewegt sich hin und her wie bei einer Wiederholung; daher wurde keine gefunden.',
  unlikelyHeight: 'Der Maßstab ist fraglich: Danach wärst du {metres, number, ::.0} m groß.',
  cameraMoves:
    'Die Kamera bewegt sich, und das ließ sich nicht herausrechnen; Höhen, Abweichung und Geschwindigkeiten werden daher nicht genannt.',
  noDisc: 'Es war keine Scheibe zu finden, die sich mit dir bewegt.',
  discLost: 'Die Scheibe ist in {lost} von {frames} Bildern nicht zu sehen.',
  discDoubtful: 'Die Lage der Scheibe ist in {doubtful} von {frames} Bildern unsicher.',
  noRimAtClick: 'In Bild {frame} war die Scheibe nicht zu erkennen.',
  pointLost: 'Der verfolgte Punkt ist in {lost} von {frames} Bildern nicht zu erkennen.',
  nobodyAtClick: 'In Bild {frame} warst du nicht zu erkennen.',
  nobodySeen: 'Niemand war ganz zu sehen, daher fehlen die Gelenke; film von der Seite, mit dem ganzen Körper im Bild.',
  seldomSeen:
    'Du warst nur in {percent} Prozent des Clips ganz zu sehen; film von der Seite, mit dem ganzen Körper im Bild.',
  eccentricTime: `Wiederholung {rep}: ${verb} in ${seconds}; ${asked}.${also}`,
  eccentricQuicker: `Wiederholung {rep}: ${verb} in ${seconds}, in Wiederholung {otherRep} in ${otherSeconds}; {asked, select, asTheFirst {die letzten sollten so lange dauern wie die erste} other {alle sollten gleich lange dauern}}.${also}`,
  speedDips: `Wiederholung {rep}: ${theVerb} wird unterwegs um ${percent} langsamer und dann wieder schneller; gefragt ist eine gleichmäßige Bewegung.${also}`,
  lastThirdDrops: `Wiederholung {rep}: ${theVerb} braucht für das letzte Drittel des Weges ${percent} der Zeit; gleichmäßig wären es 33 %.${also}`,
  pauseTime: `Wiederholung {rep}: Pause ${where} von ${seconds}; ${asked}.${also}`,
  pauseShorter: `Wiederholung {rep}: Pause ${where} von ${seconds}, in Wiederholung {otherRep} von ${otherSeconds}; die letzten Pausen sollten so lang sein wie die erste.${also}`,
  turnsRound: `Wiederholung {rep}: Umkehr ${where} {about, select, yes {wohl } other {}}{times, plural, =2 {zweimal} other {#-mal}}; einmal genügt.${also}`,
  holdTime: `Wiederholung {rep}: ${seconds} gehalten; ${asked}.${also}`,
  creaseAboveKnee: `Wiederholung {rep}: Umkehr mit der Hüftfalte ${centimetres} über der Oberkante des Knies; sie sollte mindestens auf gleicher Höhe sein.${also}`,
  rangeShorter: `Wiederholung {rep}: Bewegungsumfang von ${centimetres}, in Wiederholung {otherRep} von ${otherCentimetres}; {asked, select, asTheFirst {die letzten sollten so weit gehen wie die erste} other {alle sollten gleich weit gehen}}.${also}`,
  turnsEarly: `Wiederholung {rep}: Im Vergleich zu Wiederholung {otherRep} fehlen ${where} ${percent} des Bewegungsumfangs; {asked, select, asTheFirst {die letzten sollten so weit gehen wie die erste} other {alle sollten gleich weit gehen}}.${also}`,
  leavesPath: `Wiederholung {rep}: Abweichung von der erwarteten Linie um ${centimetres} nach {direction, select, forward {vorn} other {hinten}}; bis {limit} cm ist in Ordnung.${also}`,
  goesBack: `Wiederholung {rep}: {path, select, up {Auf dem Weg nach oben sinkt die Last um ${centimetres}} other {Auf dem Weg in die Verkürzung geht die Last um ${centimetres} zurück}}; sie sollte nur in eine Richtung gehen.${also}`,
  headMoves: `Wiederholung {rep}: Der Kopf ändert seinen Winkel zum Rumpf um ${about}{value}° ± {within}°, Kinn nach {direction, select, down {unten} other {oben}}; bis {limit}° ist in Ordnung.${also}`,
  everyEccentric: `${every}: ${verb} in ${fromTo}; ${asked}.`,
  everyPause: `${every}: Pause ${where} von ${fromTo}; ${asked}.`,
  everyHold: `${every}: ${fromTo} gehalten; ${asked}.`,
  everyPath: `${every} weicht höchstens ${about}{value} cm{within, plural, =0 {} other { ± {within} cm}} von der erwarteten Linie ab; bis {limit} cm ist in Ordnung.`,
  everyDepth: `${every} bringt die Hüftfalte {least, plural, =0 {} other {{reps, plural, one {} other {mindestens }}${about}{least} cm ± {within} cm }}unter die Oberkante des Knies.`,
  everyHead: `${every}: Der Kopf ändert seinen Winkel zum Rumpf um höchstens {most, plural, =0 {{limit}°} other {${about}{most}° ± {within}°; bis {limit}° ist in Ordnung}}.`,
} as const satisfies Readonly<Record<MeasuringMessageId, string>>;
