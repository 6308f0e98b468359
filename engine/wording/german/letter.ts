import type { LetterMessages, LetterWording } from '../english/letter.ts';

const coach: LetterMessages = {
  title: 'Brief an {trainee}, {date}',
  greeting: 'Hallo {trainee},',
  opening: 'ich habe mir deine Einheit vom {date} angesehen: {exercises}, mit {film} im Video.',
  openingWithoutFilm:
    'ich habe mir deine Einheit vom {date} angesehen. Ein Video war nicht dabei, deshalb gibt es wenig zu beurteilen.',
  clipCount: '{count, plural, one {# Clip} other {# Clips}}',
  repCount: '{count, plural, one {# Wiederholung} other {# Wiederholungen}}',
  holdCount: '{count, plural, one {# Haltephase} other {# Haltephasen}}',
  graded: 'Gesamtnote: {mark} ({score} von 100).',
  provisional: 'Gesamtnote bis jetzt: {mark} ({score} von 100).',
  noGrade: 'Diesmal gibt es keine Gesamtnote.',
  parts: 'Die Technik kommt auf {technique}, der Plan auf {programme}.',
  partsByCost:
    'Die Technik kommt auf {technique}, und der Plan kostet {cost, plural, =0 {nichts} one {# Punkt} other {# Punkte}}.',
  programmeCostsNothing: 'Der Plan hat keine Punkte gekostet.',
  stopDecides: 'Etwas war gefährlich, und das bestimmt die Note, bis es behoben ist.',
  urgentDecides: 'Wichtiger als alle Punkte: Nimm zuerst Last weg, und zwar bei {lifts}. Wie, steht weiter unten.',
  largestGain:
    'Am meisten kostet „{fault}“{places, plural, =0 {} other { ({exercise})}}: Ohne das hätte die Einheit {points} {count, plural, one {Punkt} other {Punkte}} mehr.',
  largestFinding:
    'Am meisten kostet der Plan, siehe unten: Mit der wichtigsten Änderung dort hätte die Einheit {points} {count, plural, one {Punkt} other {Punkte}} mehr.',
  onlyProgrammeCosts: 'An deiner Ausführung hat nichts Punkte gekostet; was fehlt, liegt am Plan.',
  nothingCosts: 'An deiner Ausführung hat nichts Punkte gekostet.',
  nothingCostsAtAll: 'Nichts hat Punkte gekostet, weder an deiner Ausführung noch am Plan.',
  byHand: 'Diese Note habe ich selbst gesetzt. {reason} Nach den Notizen allein wäre sie {computed}.',
  byHandNone: 'Diese Note habe ich selbst gesetzt. {reason} Nach den Notizen allein gäbe es keine.',
  provisionalBecause:
    'Die Note ist vorläufig, weil ich noch nicht alles angesehen habe, was das Video zeigt: {entries}. Wäre alles angesehen, läge die Einheit zwischen {low} und {high}.',
  provisionalEntry: '{exercise} ({percent} angesehen)',
  rangeSingle: 'Die Note ist vorläufig, weil ich noch nicht alles angesehen habe, was das Video zeigt: {entries}.',

  stopTitle: 'Vor deinem nächsten Satz: Stopp',
  stopSeen: '{where}: gefährlich durch „{fault}“.',
  stopSeenPlain: '{where}: gefährlich ({criterion}).',
  stopAdvice: 'Lass diese Übung weg, bis das behoben ist, fang dann leicht wieder an und hab jemanden dabei.',
  stopAfterPain:
    'Auch das muss in Ordnung kommen, aber die Schmerzen gehen vor. Lass bis dahin weg, was gefährlich war.',
  stopAdviceMany:
    'Das Video zeigt mehrere Dinge, die du vor allem anderen beheben musst. Lass diese Übungen weg oder mach sie mit einer Last, die du auf jeder Höhe anhalten kannst, bis alles behoben ist.',
  painTitle: 'Zuerst zu deinen Schmerzen',
  painQuote: 'Du schreibst: „{words}“',
  painEmergency:
    'Bei dem, was du beschreibst, kann sofort Hilfe nötig sein. Wähl den Notruf, wenn es jetzt da ist oder wiederkommt, und trainiere erst wieder, wenn du ärztlich die Freigabe dafür hast.',
  painSoon: 'Was du beschreibst, sollte sich bald jemand ansehen, bevor du diese Stelle wieder belastest.',
  painStop:
    'Vorerst Pause mit {lifts}: keine Sätze, nichts üben und kein neuer Clip, bis das ärztlich oder physiotherapeutisch abgeklärt ist.',
  painSettle:
    'Mach mit {lifts} erst weiter, wenn sich der Schmerz gelegt hat, frühestens am nächsten Morgen, und fang dann leichter an als zuvor. Bis dahin gibt es dort nichts zu üben, zu steigern oder zu filmen. Kommt er wieder, nimmt er zu oder wird etwas taub, hör auf.',
  painMild:
    'Der Schmerz ist leicht. Ist er ärztlich oder physiotherapeutisch abgeklärt und freigegeben, kannst du mit {lifts} weitermachen, eher leichter als schwerer und nur, solange er nicht zunimmt. Sonst warte damit, bis er sich gelegt hat. Bis dahin gibt es dort nichts zu üben, zu steigern oder zu filmen.',
  painEveryLift: 'den Übungen dieser Einheit',
  painOver:
    'Es war leicht und wieder weg, also mach weiter, eher leichter als schwerer. Hör auf, wenn es wiederkommt oder zunimmt.',
  painElsewhere:
    'Dem Namen nach belastet keine dieser Übungen die Stelle. Lass jede weg, bei der du sie spürst, und sag mir, welche es war.',
  painDefer:
    'Was das ist, kann ein Video nicht sagen; ich beurteile es nicht, und die Note lässt es aus. Bitte wende dich damit an eine Arzt- oder Physiotherapiepraxis.',

  keepTitle: 'Was so bleiben soll',
  keepLabel: '{criterion}.',
  keepSeen: '{where}: {what}',
  keepHeld: '{where}: von der ersten bis zur letzten Sekunde gleich.',
  keepStill:
    '{where}: immer noch {seconds, plural, =1 {eine Sekunde} =2 {zwei Sekunden} =3 {drei Sekunden} =4 {vier Sekunden} one {# Sekunde} other {# Sekunden}}{more, plural, =0 {} other { oder länger}} beim Absenken.',
  keepLowering:
    '{where}: {seconds, plural, =1 {eine Sekunde} =2 {zwei Sekunden} =3 {drei Sekunden} =4 {vier Sekunden} one {# Sekunde} other {# Sekunden}}{more, plural, =0 {} other { oder länger}} beim Absenken, und keine war schneller.',

  sinceTitle: 'Seit dem letzten Mal',
  sinceName: '{fault} ({exercise})',
  sinceGone: '{name}: weg. Letztes Mal in {before}.',
  sinceSame: '{name}: unverändert. Jetzt {now}, letztes Mal {before}.',
  sinceBack: '{name}: wieder da, in {now}.',
  sinceBetter: '{name}: besser. Jetzt {now}, letztes Mal {before}.',
  sinceWorse: '{name}: schlechter. Jetzt {now}, letztes Mal {before}.',
  sinceReps: '{reps} von {of}',
  sinceRepsLooked: '{reps} von {of} (soweit angesehen)',
  sinceSeverity: 'Vorher stand es auf „{before}“, jetzt auf „{now}“.',

  changeTitle: 'Was du ändern solltest',
  changeStop: 'Das kommt vor allem anderen:',
  changeIntro:
    '{count, plural, one {Eine Sache, und nur diese:} other {{count, plural, =2 {Zwei} =3 {Drei} other {#}} Dinge zum Üben, eins nach dem anderen:}}',
  changeInOrder: '{count, plural, =2 {Zwei} =3 {Drei} other {#}} Dinge zum Üben, in dieser Reihenfolge:',
  changeNothing: 'An deiner Ausführung würde ich nichts ändern. Mach weiter so.',
  changeNothingYet: 'In dem, was ich bisher angesehen habe, sehe ich nichts zu ändern.',
  changeNothingOften: 'Nichts war oft genug zu sehen, um es jetzt zu ändern. Mach weiter so.',
  changeInPlan: 'An deiner Technik ist jetzt nichts zu ändern. Was ich ändern würde, steht unten beim Plan.',
  changeNothingPain:
    'An deiner Ausführung sehe ich nichts zu ändern. Wie es weitergeht, hängt von den Schmerzen ab, siehe oben.',
  changeWaits:
    'Was ich zu {lifts} notiert habe, steht im Bewertungsbogen und ist dran, wenn {step, select, stop {das ärztlich oder physiotherapeutisch abgeklärt ist} other {sich die Schmerzen gelegt haben}}. Im Moment gibt es dort nichts zu üben.',
  changeStopWaits: 'Was in Ordnung kommen muss, steht oben. Die Schmerzen gehen vor.',
  changeNothingSeen: 'Ich habe noch zu wenig beurteilt, um zu sagen, was zu ändern ist.',
  changeLater:
    'Im Bewertungsbogen {count, plural, one {steht eine weitere Notiz. Sie kann} other {stehen # weitere Notizen. Sie können}} warten.',
  changeOnlyLater:
    'Im Bewertungsbogen {count, plural, one {steht eine Notiz. Sie kann} other {stehen # Notizen. Sie können}} warten.',
  changeOnSheet:
    'Im Bewertungsbogen {count, plural, one {steht {more, plural, =0 {eine Notiz} other {eine weitere Notiz}}} other {stehen # {more, plural, =0 {Notizen} other {weitere Notizen}}}}.',
  priority: '{number}. {fault}{places, plural, =0 {} other { ({exercise})}}',
  loadLabel: 'Nimm zuerst Last weg.',
  loadFirst:
    'Fang bei {lifts} nächstes Mal {unsafe, select, yes {mit viel weniger Last an: mit einer, die du auf jeder Höhe anhalten kannst und bei der} other {mit einem Zehntel bis einem Fünftel weniger an: mit einer Last, bei der}} dein Rücken in jeder Wiederholung so bleibt wie in der Startposition. Leg in kleinen Schritten wieder zu, und nur, solange der Rücken hält.',
  seenLabel: 'Was ich gesehen habe.',
  seen: '{where}: {what}',
  severityKey:
    'Was die Stufen bedeuten: „feinschleifen“: Kleinigkeit; „anpassen“: geht, kostet aber etwas; „korrigieren“: verfehlt den Zweck; „Stopp“: gefährlich.',
  seenPlain: '{where}: als „{severity}“ vermerkt.',
  stillAlt: 'Standbild aus dem Video: {where}. {what}',
  whyLabel: 'Warum das wichtig ist.',
  cueLabel: 'Dein Hinweis.',
  cue: '„{cue}“',
  cueIsNew: 'Das ist ein neuer Hinweis: Den vorigen hattest du in drei Briefen.',
  choiceInOrder: 'Fang mit dem ersten an. Das nächste kommt, wenn das erste sitzt.',
  choiceOrder:
    'Du entscheidest, womit du anfängst: {count, plural, =2 {mit dem ersten oder dem zweiten} other {Jedes davon passt}}. Eins nach dem anderen reicht.',
  choiceCue:
    'Du entscheidest: Bleib bei diesem Hinweis oder nimm „{other}“, je nachdem, womit du besser zurechtkommst.',
  drillLabel: 'Üben.',
  proofLabel: 'Woran wir es erkennen.',
  proofPlain: 'Der nächste Clip braucht keine Notiz mehr zu: {criterion}.',

  everyRep:
    '{holds, plural, =0 {{count, plural, one {die eine Wiederholung} other {alle # Wiederholungen}}} other {{count, plural, one {die eine Haltephase} other {alle # Haltephasen}}}}',
  countedReps: '{reps} von {of} {holds, plural, =0 {Wiederholungen} other {Haltephasen}}',
  wholeSets: '{count, plural, one {ein ganzer Satz} other {# ganze Sätze}}',
  everyRepOf: 'jede Wiederholung von {places}',
  someReps:
    '{holds, plural, =0 {{count, plural, one {Wiederholung} other {Wiederholungen}}} other {{count, plural, one {Haltephase} other {Haltephasen}}}} {reps} von {of}',
  wholeSet: 'der ganze Satz',
  repSpan: '{from} bis {to}',
  momentOfRep: '{times}, {reps}',
  momentsOfReps: '{reps} ({times})',
  alsoInClip: ', auch in {clip} ({times})',
  moreMoments: '{count, plural, one {# weitere Stelle} other {# weitere Stellen}}',
  moreClips: '{count, plural, one {# weiterer Clip} other {# weitere Clips}}',

  exercisesTitle: 'Übung für Übung',
  exercisesCaption: 'Was du gemacht hast, was im Video ist, und die Note dazu',
  columnExercise: 'Übung',
  columnWork: 'Sätze × Wdh. × Last',
  columnGrade: 'Note',
  columnFilm: 'Video',
  gradeCell: '{mark} ({score})',
  gradeCellProvisional: '{mark} ({score}), vorläufig',
  gradeCellNone: 'Keine Note',
  entryNone: '{exercise} hat keine Note: {reason}',
  entryNotJudged: '{exercise} hat keine Note: Beurteilt habe ich hier noch nichts.',
  entryCapped: '{exercise}: Die Note bleibt begrenzt, bis behoben ist, was gefährlich war.',
  entryByHand: '{exercise}: Diese Note habe ich selbst gesetzt. {reason} Nach den Notizen allein wäre sie {computed}.',
  entryByHandNone: '{exercise}: Diese Note habe ich selbst gesetzt. {reason} Nach den Notizen allein gäbe es keine.',
  noFilm: 'keins',

  programmeTitle: 'Der Plan',
  programmeWaits:
    'Was zum Plan von {lifts} zu sagen ist, wartet, bis {step, select, stop {das ärztlich oder physiotherapeutisch abgeklärt ist} other {sich die Schmerzen gelegt haben}}.',

  filmTitle: 'Was du als Nächstes filmst',
  filmNone:
    'Film {effort, select, hardest {den härtesten Satz} other {einen leichten Satz}} {view}, ab der Startposition und mit mindestens drei Wiederholungen.{effort, select, hardest {} other { Hör auf, solange noch drei saubere Wiederholungen drin wären.}}',
  filmOtherView: 'Nimm einen Clip {view} dazu. Das Video, das ich hatte, zeigt nicht: {criteria}.',
  filmNoView: 'Keine übliche Kameraposition zeigt: {criteria}. Zeig es mir vor Ort oder beschreib es.',
  filmUnseen: 'Das Video zeigt mehr, als ich bisher beurteilt habe. Noch offen: {criteria}.',
  filmNotLookedAt: 'Diese Clips habe ich noch nicht angesehen.',
  filmOnlyNotes:
    'Bis jetzt gibt es zum Video nur Notizen; sie stehen im Bewertungsbogen. Beurteilt habe ich noch nichts; dafür braucht es keinen neuen Clip.',
  filmFirst:
    'Film {effort, select, hardest {den härtesten Satz jeder Übung} other {von jeder Übung einen leichten Satz}}, ab der Startposition und mit mindestens drei Wiederholungen.{effort, select, hardest {} other { Hör auf, solange noch drei saubere Wiederholungen drin wären.}}',
  filmAfterStop:
    'Wenn es behoben ist, film den ersten leichten Satz {view}, samt Startposition, und schick ihn, bevor du Last zulegst.',
  filmLighter: 'Film den ersten Satz mit weniger Last {view}, samt Startposition.',
  filmAgain:
    '{effort, select, hardest {Film den härtesten Satz {lifts, select, one {} other {jeder Übung }}wieder von derselben Seite und aus demselben Abstand, damit sich die beiden Clips nebeneinanderlegen lassen.} other {Film {lifts, select, one {die Übung} other {jede Übung}} wieder von derselben Seite und aus demselben Abstand, damit sich die beiden Clips nebeneinanderlegen lassen: einen leichten Satz, nach dem noch drei saubere Wiederholungen drin wären.}}',
  filmAgainOf:
    '{effort, select, hardest {Film den härtesten Satz von {lifts} wieder von derselben Seite und aus demselben Abstand, damit sich die beiden Clips nebeneinanderlegen lassen.} other {Film {lifts} wieder von derselben Seite und aus demselben Abstand, damit sich die beiden Clips nebeneinanderlegen lassen: leichte Sätze, nach denen noch drei saubere Wiederholungen drin wären.}}',
  filmAfterPain:
    'Wenn sich die Schmerzen gelegt haben, film von {lifts} zuerst einen leichten Satz, von derselben Seite und aus demselben Abstand.',
  filmAfterClinician: 'Kein neuer Clip von {lifts}, bis du ärztlich oder physiotherapeutisch die Freigabe hast.',
  filmNothingYet: 'Kein neuer Clip, bis du ärztlich oder physiotherapeutisch die Freigabe hast.',
  filmOnceSettled: 'Wenn sich die Schmerzen gelegt haben, film zuerst einen leichten Satz.',
  filmWithoutPain: 'Film keine Übung, bei der du den Schmerz spürst.',
  view: '{view, select, side {von der Seite} front {von vorn} rear {von hinten} other {von schräg vorn}}',

  cautionsTitle: 'Sicherheitshinweise',
  signOff: 'Gutes Training. Schreib, wenn etwas unklar ist, und schick den nächsten Clip, sobald du ihn hast.',
  signOffSame: 'Gutes Training. Schreib, wenn etwas unklar ist, und schick den nächsten Clip, sobald du ihn hast.',
  signOffPain: 'Kümmere dich zuerst darum und schreib mir, wie es sich entwickelt.',
  signOffStop: 'Bring das zuerst in Ordnung. Schreib, wenn etwas unklar ist.',
  basis:
    'Einschätzung anhand des Videos; kein medizinischer Rat. Einheit vom {date}; Clips: {clips}. Bewertet nach: {rubric}, Version {version}.',
  basisWithoutFilm:
    'Einschätzung anhand des Videos; kein medizinischer Rat. Einheit vom {date}; ohne Clips. Bewertet nach: {rubric}, Version {version}.',

  quoted: '„{words}“',
  severity:
    '{severity, select, keep {beibehalten} prefer {feinschleifen} adjust {anpassen} correct {korrigieren} other {Stopp}}',
};

const self: LetterMessages = {
  ...coach,
  title: 'Rückblick auf mein Training, {date}',
  greeting: 'Notizen an mich, {trainee}:',
  opening: 'Ich habe mir meine Einheit vom {date} angesehen: {exercises}, mit {film} im Video.',
  openingWithoutFilm:
    'Ich habe mir meine Einheit vom {date} angesehen. Es gibt kein Video davon, deshalb ist wenig zu beurteilen.',
  onlyProgrammeCosts: 'An meiner Ausführung hat nichts Punkte gekostet; was fehlt, liegt am Plan.',
  nothingCosts: 'An meiner Ausführung hat nichts Punkte gekostet.',
  nothingCostsAtAll: 'Nichts hat Punkte gekostet, weder an meiner Ausführung noch am Plan.',
  stopTitle: 'Vor meinem nächsten Satz: Stopp',
  stopAdvice: 'Ich lasse diese Übung weg, bis das behoben ist, fange dann leicht wieder an und habe jemanden dabei.',
  stopAfterPain:
    'Auch das muss in Ordnung kommen, aber die Schmerzen gehen vor. Bis dahin lasse ich weg, was gefährlich war.',
  urgentDecides: 'Wichtiger als alle Punkte: Ich nehme zuerst Last weg, und zwar bei {lifts}. Wie, steht weiter unten.',
  stopAdviceMany:
    'Das Video zeigt mehrere Dinge, die ich vor allem anderen beheben muss. Ich lasse diese Übungen weg oder mache sie mit einer Last, die ich auf jeder Höhe anhalten kann, bis alles behoben ist.',
  painTitle: 'Zuerst zu meinen Schmerzen',
  painQuote: 'Ich schrieb: „{words}“',
  painEmergency:
    'Bei dem, was ich beschreibe, kann sofort Hilfe nötig sein. Ich wähle den Notruf, wenn es jetzt da ist oder wiederkommt, und trainiere erst wieder, wenn ich ärztlich die Freigabe dafür habe.',
  painSoon: 'Was ich beschreibe, sollte sich bald jemand ansehen, bevor ich diese Stelle wieder belaste.',
  painStop:
    'Vorerst Pause mit {lifts}: keine Sätze, nichts üben und kein neuer Clip, bis das ärztlich oder physiotherapeutisch abgeklärt ist.',
  painSettle:
    'Ich mache mit {lifts} erst weiter, wenn sich der Schmerz gelegt hat, frühestens am nächsten Morgen, und fange dann leichter an als zuvor. Bis dahin gibt es dort nichts zu üben, zu steigern oder zu filmen. Kommt er wieder, nimmt er zu oder wird etwas taub, höre ich auf.',
  painMild:
    'Der Schmerz ist leicht. Ist er ärztlich oder physiotherapeutisch abgeklärt und freigegeben, kann ich mit {lifts} weitermachen, eher leichter als schwerer und nur, solange er nicht zunimmt. Sonst warte ich damit, bis er sich gelegt hat. Bis dahin gibt es dort nichts zu üben, zu steigern oder zu filmen.',
  painOver:
    'Es war leicht und wieder weg, also mache ich weiter, eher leichter als schwerer. Ich höre auf, wenn es wiederkommt oder zunimmt.',
  painElsewhere: 'Dem Namen nach belastet keine dieser Übungen die Stelle. Ich lasse jede weg, bei der ich sie spüre.',
  painDefer:
    'Was das ist, kann ein Video nicht sagen; dieser Rückblick beurteilt es nicht, und die Note lässt es aus. Ich wende mich damit an eine Arzt- oder Physiotherapiepraxis.',
  changeTitle: 'Was ich ändere',
  changeIntro:
    '{count, plural, one {Eine Sache, und nur diese:} other {{count, plural, =2 {Zwei} =3 {Drei} other {#}} Dinge zum Üben, eins nach dem anderen:}}',
  changeNothing: 'An meiner Ausführung ist nichts zu ändern. Ich mache weiter so.',
  changeNothingYet: 'In dem, was ich bisher angesehen habe, sehe ich nichts zu ändern.',
  changeNothingOften: 'Nichts war oft genug zu sehen, um es jetzt zu ändern. Ich mache weiter so.',
  changeInPlan: 'An meiner Technik ist jetzt nichts zu ändern. Was ich ändern würde, steht unten beim Plan.',
  changeNothingPain:
    'An meiner Ausführung sehe ich nichts zu ändern. Wie es weitergeht, hängt von den Schmerzen ab, siehe oben.',
  cueLabel: 'Mein Hinweis.',
  cueIsNew: 'Das ist ein neuer Hinweis: Den vorigen hatte ich in drei Rückblicken.',
  loadLabel: 'Ich nehme zuerst Last weg.',
  loadFirst:
    'Ich fange bei {lifts} nächstes Mal {unsafe, select, yes {mit viel weniger Last an: mit einer, die ich auf jeder Höhe anhalten kann und bei der} other {mit einem Zehntel bis einem Fünftel weniger an: mit einer Last, bei der}} mein Rücken in jeder Wiederholung so bleibt wie in der Startposition. Ich lege in kleinen Schritten wieder zu, und nur, solange der Rücken hält.',
  choiceInOrder: 'Ich fange mit dem ersten an. Das nächste kommt, wenn das erste sitzt.',
  choiceOrder:
    'Ich fange {count, plural, =2 {mit dem ersten oder dem zweiten} other {mit irgendeinem davon}} an, eins nach dem anderen.',
  choiceCue: 'Ich behalte diesen Hinweis oder nehme „{other}“, je nachdem, womit ich mehr anfangen kann.',
  proofLabel: 'Woran ich es merke.',
  exercisesCaption: 'Was ich gemacht habe, was im Video ist, und die Note dazu',
  filmTitle: 'Was ich als Nächstes filme',
  filmNone:
    '{effort, select, hardest {den härtesten Satz} other {einen leichten Satz}} {view} filmen, ab der Startposition und mit mindestens drei Wiederholungen.{effort, select, hardest {} other { Ich höre auf, solange noch drei saubere Wiederholungen drin wären.}}',
  filmOtherView: 'einen Clip {view} dazunehmen. Das Video, das ich habe, zeigt nicht: {criteria}.',
  filmNoView: 'keine übliche Kameraposition zeigt: {criteria}. Ich bitte jemanden, darauf zu achten.',
  filmFirst:
    '{effort, select, hardest {Den härtesten Satz jeder Übung} other {Von jeder Übung einen leichten Satz}} filmen, ab der Startposition und mit mindestens drei Wiederholungen.{effort, select, hardest {} other { Ich höre auf, solange noch drei saubere Wiederholungen drin wären.}}',
  filmAfterStop:
    'wenn es behoben ist, den ersten leichten Satz {view} filmen, samt Startposition, und ansehen, bevor ich Last zulege.',
  filmLighter: 'den ersten Satz mit weniger Last {view} filmen, samt Startposition.',
  filmAfterPain:
    'Wenn sich die Schmerzen gelegt haben, von {lifts} zuerst einen leichten Satz filmen, von derselben Seite und aus demselben Abstand.',
  filmAgain:
    '{effort, select, hardest {Den härtesten Satz {lifts, select, one {} other {jeder Übung }}wieder von derselben Seite und aus demselben Abstand filmen, damit sich die beiden Clips nebeneinanderlegen lassen.} other {{lifts, select, one {Die Übung} other {Jede Übung}} wieder von derselben Seite und aus demselben Abstand filmen, damit sich die beiden Clips nebeneinanderlegen lassen: einen leichten Satz, nach dem noch drei saubere Wiederholungen drin wären.}}',
  filmAgainOf:
    '{effort, select, hardest {Den härtesten Satz von {lifts} wieder von derselben Seite und aus demselben Abstand filmen, damit sich die beiden Clips nebeneinanderlegen lassen.} other {{lifts} wieder von derselben Seite und aus demselben Abstand filmen, damit sich die beiden Clips nebeneinanderlegen lassen: leichte Sätze, nach denen noch drei saubere Wiederholungen drin wären.}}',
  filmOnceSettled: 'Wenn sich die Schmerzen gelegt haben, zuerst einen leichten Satz filmen.',
  filmNothingYet: 'Kein neuer Clip, bis ich ärztlich oder physiotherapeutisch die Freigabe habe.',
  filmAfterClinician: 'Kein neuer Clip von {lifts}, bis ich ärztlich oder physiotherapeutisch die Freigabe habe.',
  filmWithoutPain: 'Ich filme keine Übung, bei der ich den Schmerz spüre.',
  signOff: 'Als Nächstes: üben, filmen, wieder ansehen.',
  signOffSame: 'Als Nächstes: trainieren, filmen, wieder ansehen.',
  signOffPain: 'Als Nächstes: zuerst das klären.',
  signOffStop: 'Als Nächstes: zuerst das in Ordnung bringen.',
};

const warm: Partial<LetterMessages> = {
  greeting: 'Hallo {trainee}, danke fürs Schicken,',
  opening: 'ich habe mir deine Einheit vom {date} in Ruhe angesehen: {exercises}, mit {film} im Video.',
  changeIntro:
    '{count, plural, one {Eine Sache würde ich dir gern mitgeben, und nur diese:} other {{count, plural, =2 {Zwei} =3 {Drei} other {#}} Dinge würde ich dir gern mitgeben, eins nach dem anderen:}}',
  changeInOrder:
    '{count, plural, =2 {Zwei} =3 {Drei} other {#}} Dinge würde ich dir gern mitgeben, in dieser Reihenfolge:',
  changeNothing: 'An deiner Ausführung würde ich nichts ändern. Freu dich darüber und mach weiter so.',
  signOff: 'Schreib jederzeit, wenn etwas unklar ist; ich freue mich auf den nächsten Clip.',
  signOffSame: 'Schreib jederzeit, wenn etwas unklar ist; ich freue mich auf den nächsten Clip.',
  signOffPain: 'Kümmere dich zuerst um dich und schreib mir, wie es sich entwickelt. Das Training kann warten.',
  signOffStop: 'Bring das zuerst in Ordnung, es eilt nicht. Schreib jederzeit, wenn etwas unklar ist.',
};

const direct: Partial<LetterMessages> = {
  greeting: '{trainee},',
  opening: 'Einheit vom {date}: {exercises}; {film}.',
  changeIntro:
    '{count, plural, one {Ändere eine Sache:} other {Ändere {count, plural, =2 {zwei} =3 {drei} other {#}} Dinge, eins nach dem anderen:}}',
  changeInOrder: 'Ändere {count, plural, =2 {zwei} =3 {drei} other {#}} Dinge, in dieser Reihenfolge:',
  changeNothing: 'Nichts zu ändern. Weiter so.',
  changeNothingYet: 'In dem, was ich angesehen habe, ist nichts zu ändern.',
  changeLater: '{count, plural, one {Eine weitere Notiz steht} other {# weitere Notizen stehen}} im Bewertungsbogen.',
  signOff: 'Schick den nächsten Clip, sobald du ihn hast.',
  signOffSame: 'Schick den nächsten Clip, sobald du ihn hast.',
  signOffStop: 'Bring das zuerst in Ordnung.',
};

/** The letter in German. */
export const letter: LetterWording = { coach, self, tones: { warm, direct } };
