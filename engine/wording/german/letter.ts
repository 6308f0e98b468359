import type { LetterMessages, LetterWording } from '../english/letter.ts';

const coach: LetterMessages = {
  title: 'Brief an {trainee}, {date}',
  greeting: 'Hallo {trainee},',
  opening: 'ich habe mir deine Einheit vom {date} angesehen: {exercises}, mit {clips} und {reps} im Film.',
  openingUnmarked: 'ich habe mir deine Einheit vom {date} angesehen: {exercises}, mit {clips} im Film.',
  openingWithoutFilm:
    'ich habe mir deine Einheit vom {date} angesehen. Ein Film war nicht dabei, deshalb gibt es wenig zu beurteilen.',
  clipCount: '{count, plural, one {# Clip} other {# Clips}}',
  repCount: '{count, plural, one {# Wiederholung} other {# Wiederholungen}}',
  graded: 'Gesamtnote: {mark} ({score} von 100).',
  provisional: 'Gesamtnote bis jetzt: {mark} ({score} von 100).',
  noGrade: 'Diesmal gibt es keine Gesamtnote.',
  parts: 'Die Technik steht bei {technique}, der Plan bei {programme}.',
  partsByCost:
    'Die Technik steht bei {technique}, und der Plan kostet {cost, plural, =0 {nichts} one {# Punkt} other {# Punkte}}.',
  cappedByStop: 'Eine Stopp-Bemerkung hält sie dort: Mit einer solchen steht keine Einheit über {cap}.',
  largestGain:
    'Am meisten kostet „{fault}“ ({exercise}): Ohne das stünde die Einheit {points} {count, plural, one {Punkt} other {Punkte}} höher.',
  largestFinding:
    'Am meisten kostet der Plan: {what} Ohne das stünde die Einheit {points} {count, plural, one {Punkt} other {Punkte}} höher.',
  onlyProgrammeCosts: 'Nichts im Film hat dich einen Punkt gekostet; was fehlt, liegt am Plan.',
  nothingCosts: 'Nichts im Film hat dich einen Punkt gekostet.',
  byHand: 'Diese Note habe ich selbst gesetzt. {reason} Nach den Bemerkungen allein wäre sie {computed}.',
  byHandNone: 'Diese Note habe ich selbst gesetzt. {reason} Nach den Bemerkungen allein gäbe es keine.',
  provisionalBecause:
    'Die Note ist vorläufig, weil ein Teil dessen, was der Film zeigen kann, noch nicht angesehen ist: {entries}. Ganz angesehen läge die Einheit zwischen {low} und {high}.',
  provisionalEntry: '{exercise} ({percent} angesehen)',
  rangeSingle:
    'Die Note ist vorläufig, weil ein Teil dessen, was der Film zeigen kann, noch nicht angesehen ist: {entries}.',

  stopTitle: 'Vor deinem nächsten Satz: Stopp',
  stopSeen: '{where}: unsicher durch „{fault}“.',
  stopAdvice: 'Lass diese Übung weg, bis das behoben ist, fang dann leicht wieder an und hab jemanden dabei.',
  painTitle: 'Zu den Schmerzen, die du erwähnst',
  painQuote: 'Du schreibst: „{words}“',
  painDefer:
    'Was das ist, kann ein Film nicht sagen; ich beurteile es nicht, und die Note lässt es aus. Bitte frag eine zugelassene ärztliche oder physiotherapeutische Fachperson.',

  keepTitle: 'Was so bleiben soll',
  keepLabel: '{criterion}.',
  keepFlag: '{where}: {what}',
  keepTicked: '{exercise}, überall in Ordnung, wo ich hingesehen habe: {criteria}.',
  keepTickedAll:
    '{exercise}, in {count, plural, one {der einen Wiederholung} other {allen # Wiederholungen}} in Ordnung: {criteria}.',

  sinceTitle: 'Seit dem letzten Mal',
  sinceGone: '{fault} ({exercise}): weg. Vorher in {before}.',
  sinceBack: '{fault} ({exercise}): wieder da, in {now}.',
  sinceBetter: '{fault} ({exercise}): besser. Jetzt {now}, vorher {before}.',
  sinceWorse: '{fault} ({exercise}): mehr als beim letzten Mal. Jetzt {now}, vorher {before}.',
  sinceReps: '{reps} von {of}',

  changeTitle: 'Was du ändern solltest',
  changeStop: 'Das kommt vor allem anderen:',
  changeIntro:
    '{count, plural, one {Eine Sache, und nur diese:} other {Arbeite an diesen {count, plural, =2 {zwei} =3 {drei} other {#}} Dingen, das wichtigste zuerst:}}',
  changeNothing: 'An diesem Film habe ich nichts zu ändern. Mach es wieder so.',
  changeNothingYet: 'An dem, was ich bisher angesehen habe, ist nichts zu ändern.',
  changeNothingOften: 'Nichts war oft genug zu sehen, um es jetzt zu ändern. Mach es wieder so.',
  changeNothingPain:
    'Der Film zeigt nichts, was zu ändern wäre. Ob und wie du damit weitermachst, hängt von den Schmerzen ab: Lies oben nach, bevor du es wiederholst.',
  changeNothingSeen: 'Es ist zu wenig angesehen, um zu sagen, was zu ändern ist.',
  changeLater:
    'Im Bogen {count, plural, one {steht eine weitere Bemerkung. Sie kann} other {stehen # weitere Bemerkungen. Sie können}} warten.',
  changeOnlyLater:
    'Im Bogen {count, plural, one {steht eine Bemerkung. Sie kann} other {stehen # Bemerkungen. Sie können}} warten.',
  priority: '{number}. {fault} ({exercise})',
  priorityAcross: '{number}. {fault}',
  seenLabel: 'Was ich gesehen habe.',
  seen: '{where}: {what}',
  seenPlain: '{where}: mit „{weight}“ vermerkt.',
  stillAlt: 'Standbild aus dem Film: {where}. {what}',
  whyLabel: 'Warum es zählt.',
  why: '{why} ({source}).',
  cueLabel: 'Dein Hinweis.',
  cue: '„{cue}“',
  cueIsNew: 'Das ist ein neuer Hinweis: Der vorige stand in drei Briefen.',
  choiceOrder: 'Du entscheidest, ob du mit dem ersten oder dem zweiten anfängst. Eins nach dem anderen reicht.',
  choiceCue: 'Du entscheidest: Behalte diesen Hinweis oder nimm „{other}“. Nimm den, den du eher spürst.',
  drillLabel: 'Üben.',
  proofLabel: 'Woran wir es merken.',
  proofPlain: 'Der nächste Clip braucht keine Bemerkung mehr zu: {criterion}.',

  everyRep: '{count, plural, one {die eine Wiederholung} other {alle # Wiederholungen}}',
  someReps: '{count, plural, one {Wiederholung} other {Wiederholungen}} {reps} von {of}',
  wholeSet: 'der ganze Satz',
  repSpan: '{from} bis {to}',
  sighting: '{exercise}, {reps}',
  sightingInClip: '{exercise}, {clip}, {reps}',
  sightingAt: '{sighting} ({times})',
  moreMoments: '{count, plural, one {# weitere Stelle} other {# weitere Stellen}}',
  moreClips: '{count, plural, one {# weiterer Clip} other {# weitere Clips}}',

  exercisesTitle: 'Übung für Übung',
  exercisesCaption: 'Was gemacht wurde, was im Film ist, und die Note dazu',
  columnExercise: 'Übung',
  columnWork: 'Sätze × Wdh. × Last',
  columnGrade: 'Note',
  columnFilm: 'Film',
  gradeCell: '{mark} ({score})',
  gradeCellProvisional: '{mark} ({score}), vorläufig',
  gradeCellNone: 'Keine Note',
  entryNone: '{exercise} hat keine Note: {reason}',
  entryCapped: '{exercise} wird von der Stopp-Bemerkung gehalten: Mit einer solchen steht keine Übung über {cap}.',
  entryByHand:
    '{exercise}: Diese Note habe ich selbst gesetzt. {reason} Nach den Bemerkungen allein wäre sie {computed}.',
  entryByHandNone:
    '{exercise}: Diese Note habe ich selbst gesetzt. {reason} Nach den Bemerkungen allein gäbe es keine.',
  noFilm: 'keiner',

  programmeTitle: 'Der Plan',

  filmTitle: 'Was du als Nächstes filmst',
  filmNone: '{exercise}: Film den härtesten Satz {view}, vom Aufbau an über mindestens drei Wiederholungen.',
  filmOtherView: '{exercise}: Nimm einen Clip {view} dazu. Der Film, den ich hatte, zeigt nicht: {criteria}.',
  filmNoView: '{exercise}: Keine übliche Kameraposition zeigt: {criteria}. Zeig es mir vor Ort oder beschreib es.',
  filmUnseen: '{exercise}, noch nicht beurteilt: {criteria}. Der nächste Clip {view} macht es möglich.',
  filmFirst: 'Film den härtesten Satz jeder Übung, vom Aufbau an über mindestens drei Wiederholungen.',
  filmAfterStop:
    '{exercise}: Wenn es behoben ist, film den ersten leichten Satz {view}, samt Aufbau, und schick ihn, bevor du Last zulegst.',
  filmAgain:
    'Film den härtesten Satz wieder von derselben Seite und aus demselben Abstand, damit sich die beiden Clips nebeneinanderlegen lassen.',
  filmAfterPain:
    'Wenn die Schmerzen abgeklungen sind, film zuerst einen leichten Satz von derselben Seite und aus demselben Abstand.',
  view: '{view, select, side {von der Seite} front {von vorn} rear {von hinten} other {von schräg vorn}}',

  cautionsTitle: 'Vorsicht',
  signOff: 'Gutes Training. Schreib, wenn etwas unklar ist, und schick den nächsten Clip, sobald du ihn hast.',
  basis:
    'Einschätzung eines Coachs nach Video; kein medizinischer Rat. Einheit vom {date}; Clips: {clips}. Bewertet nach: {rubric}, Version {version}.',
  basisWithoutFilm:
    'Einschätzung eines Coachs nach Video; kein medizinischer Rat. Einheit vom {date}; ohne Clips. Bewertet nach: {rubric}, Version {version}.',

  quoted: '„{words}“',
  weight:
    '{weight, select, keep {beibehalten} prefer {feinschleifen} adjust {anpassen} correct {korrigieren} other {Stopp}}',
};

const self: LetterMessages = {
  ...coach,
  title: 'Rückblick auf mein Training, {date}',
  greeting: 'Notizen an mich, {trainee}:',
  opening: 'Ich habe mir meine Einheit vom {date} angesehen: {exercises}, mit {clips} und {reps} im Film.',
  openingUnmarked: 'Ich habe mir meine Einheit vom {date} angesehen: {exercises}, mit {clips} im Film.',
  openingWithoutFilm:
    'Ich habe mir meine Einheit vom {date} angesehen. Es gibt keinen Film davon, deshalb ist wenig zu beurteilen.',
  onlyProgrammeCosts: 'Nichts im Film hat einen Punkt gekostet; was fehlt, liegt am Plan.',
  nothingCosts: 'Nichts im Film hat einen Punkt gekostet.',
  stopTitle: 'Vor meinem nächsten Satz: Stopp',
  stopAdvice: 'Ich lasse diese Übung weg, bis das behoben ist, fange dann leicht wieder an und habe jemanden dabei.',
  painTitle: 'Zu den Schmerzen, die ich notiert habe',
  painQuote: 'Ich schrieb: „{words}“',
  painDefer:
    'Was das ist, kann ein Film nicht sagen; dieser Rückblick beurteilt es nicht, und die Note lässt es aus. Ich frage eine zugelassene ärztliche oder physiotherapeutische Fachperson.',
  changeTitle: 'Was ich ändere',
  changeIntro:
    '{count, plural, one {Eine Sache, und nur diese:} other {Ich arbeite an diesen {count, plural, =2 {zwei} =3 {drei} other {#}} Dingen, das wichtigste zuerst:}}',
  changeNothing: 'An diesem Film ist nichts zu ändern. Ich mache es wieder so.',
  changeNothingPain:
    'Der Film zeigt nichts, was zu ändern wäre. Ob und wie ich damit weitermache, hängt von den Schmerzen ab: Ich lese oben nach, bevor ich es wiederhole.',
  changeNothingYet: 'An dem, was ich bisher angesehen habe, ist nichts zu ändern.',
  changeNothingOften: 'Nichts war oft genug zu sehen, um es jetzt zu ändern. Ich mache es wieder so.',
  cueLabel: 'Mein Hinweis.',
  choiceOrder: 'Ich fange mit dem ersten oder dem zweiten an, eins nach dem anderen.',
  choiceCue: 'Ich behalte diesen Hinweis oder nehme „{other}“, je nachdem, was ich eher spüre.',
  proofLabel: 'Woran ich es merke.',
  filmTitle: 'Was ich als Nächstes filme',
  filmNone: '{exercise}: den härtesten Satz {view} filmen, vom Aufbau an über mindestens drei Wiederholungen.',
  filmOtherView: '{exercise}: einen Clip {view} dazunehmen. Der Film, den ich habe, zeigt nicht: {criteria}.',
  filmNoView: '{exercise}: Keine übliche Kameraposition zeigt: {criteria}. Ich bitte jemanden, darauf zu achten.',
  filmFirst: 'Den härtesten Satz jeder Übung filmen, vom Aufbau an über mindestens drei Wiederholungen.',
  filmAfterStop:
    '{exercise}: Wenn es behoben ist, den ersten leichten Satz {view} filmen, samt Aufbau, und ansehen, bevor ich Last zulege.',
  filmAfterPain:
    'Wenn die Schmerzen abgeklungen sind, zuerst einen leichten Satz von derselben Seite und aus demselben Abstand filmen.',
  filmAgain:
    'Den härtesten Satz wieder von derselben Seite und aus demselben Abstand filmen, damit sich die beiden Clips nebeneinanderlegen lassen.',
  signOff: 'Als Nächstes: üben, filmen, wieder ansehen.',
};

const warm: Partial<LetterMessages> = {
  greeting: 'Hallo {trainee}, und danke, dass du das geschickt hast,',
  opening: 'ich habe mir deine Einheit vom {date} in Ruhe angesehen: {exercises}, mit {clips} und {reps} im Film.',
  openingUnmarked: 'ich habe mir deine Einheit vom {date} in Ruhe angesehen: {exercises}, mit {clips} im Film.',
  changeIntro:
    '{count, plural, one {Eine Sache würde ich dir gern mitgeben, und nur diese:} other {Diese {count, plural, =2 {zwei} =3 {drei} other {#}} Dinge würde ich dir gern mitgeben, das wichtigste zuerst:}}',
  changeNothing: 'An diesem Film würde ich nichts ändern. Freu dich daran und mach es wieder so.',
  signOff:
    'Da steckt richtig Arbeit drin. Schreib jederzeit, wenn etwas unklar ist; ich freue mich auf den nächsten Clip.',
};

const direct: Partial<LetterMessages> = {
  greeting: '{trainee},',
  opening: 'Einheit vom {date}: {exercises}; {clips}, {reps}.',
  openingUnmarked: 'Einheit vom {date}: {exercises}; {clips}.',
  changeIntro:
    '{count, plural, one {Ändere eine Sache:} other {Ändere {count, plural, =2 {zwei} =3 {drei} other {#}} Dinge, das wichtigste zuerst:}}',
  changeNothing: 'Nichts zu ändern. Wiederhol es.',
  changeNothingYet: 'An dem, was angesehen ist, ist nichts zu ändern.',
  changeLater: '{count, plural, one {Eine weitere Bemerkung steht} other {# weitere Bemerkungen stehen}} im Bogen.',
  signOff: 'Schick den nächsten Clip, sobald du ihn hast.',
};

/** The letter in German. */
export const letter: LetterWording = { coach, self, tones: { warm, direct } };
