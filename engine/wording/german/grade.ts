import type { MissingGradeId } from '../../grading/grade.ts';
import type { FindingMessageId } from '../../programme/finding.ts';
import type { BreakdownMessageId, FindingWording } from '../english/grade.ts';

/** Why there is no grade. */
export const missingGrades = {
  noClip: 'Es gibt keinen Clip, der zu beurteilen wäre.',
  viewShowsNothing:
    'Die Clips sind von einer Seite gefilmt, die nichts von dem zeigt, wonach diese Übung beurteilt wird.',
  nothingLookedAt: 'Es ist noch nichts angesehen.',
  tooLittleLookedAt:
    'Von dem, was die Clips zeigen können, sind erst {seen} % angesehen; eine Note braucht {needed} %.',
  unknownExercise: 'Die Übung steht nicht in der Bibliothek: Trag sie dort ein oder wähl eine andere.',
  noExercise: 'Die Einheit enthält noch keine Übung.',
  noGradedExercise: 'Noch hat keine Übung der Einheit eine Note.',
} satisfies Readonly<Record<MissingGradeId, string>>;

/** What the breakdown says besides the words of the sheet. */
export const breakdown = {
  title: 'Notenübersicht: {trainee}, {date}',
  sessionCaption: 'Punkte der Übungen und der Einheit, von 100',
  part: 'Teil',
  technique: 'Technik',
  gradeOf: '{exercise}: {grade}',
  gradeCell: '{mark} ({score})',
  criteriaCaption: '{exercise}: Kriterien, von 100 Punkten; angesehen: {coverage}',
  notShown: 'In dieser Ansicht nicht zu sehen: {criteria}.',
  raiseLabel: 'Was die Note heben würde:',
  raise: '{remark} +{gain}',
  raiseOf: '{remark} ({exercise}) +{gain}',
  nothingRaises: 'Keine Bemerkung kostet Punkte.',
  stopFirst: 'Bring zuerst in Ordnung, was unsicher war: Ein Stopp steht.',
  byHandStays: 'Die Note ist von Hand gesetzt, und keine Bemerkung ändert sie.',
  rule: 'Eine Übung: {mean} gewichtetes Mittel ihrer Kriterien, {lowest} ihr niedrigstes Kriterium.',
  ruleOfPoints:
    'Eine Übung: 100 Punkte, weniger {mean, number, ::.###} dessen, was dem gewichteten Mittel ihrer Kriterien auf 100 fehlt, {lows}; ein Stopp hält sie bei {cap}.',
  ruleOfLow:
    '{share, number, ::.###} dessen, was {rank, plural, one {dem niedrigsten Kriterium} =2 {dem zweitniedrigsten} other {dem #. von unten}} auf {under} fehlt',
  ruleOfSession: 'Die Einheit: {technique} Technik, {programme} Plan.',
  ruleOfCost:
    'Die Einheit: Technik, weniger {prefer} je Befund zum Plan mit „feinschleifen“, {adjust} mit „anpassen“ und {correct} mit „korrigieren“, höchstens {most}; ein Stopp hält sie bei {cap}.',
  pointsOff: '−{points}',
} satisfies Readonly<Record<BreakdownMessageId, string>>;

const longLengths =
  'Arbeit bei großer Muskellänge hat Muskeln bisher mindestens ebenso gut wachsen lassen, in manchen Studien besser.';

/** What the plan of a session could do better. */
export const programme = {
  repsForGrowth: {
    what: '{exercise}: {reps, plural, one {# Wiederholung} other {# Wiederholungen}} je Satz geplant, und das Ziel ist Muskelaufbau.',
    why: 'Muskeln wachsen über eine weite Spanne von Wiederholungen etwa gleich, wenn die Sätze nahe ans Versagen gehen; außerhalb davon kosten Sätze mehr, als sie bringen.',
    suggestion: 'Wähl eine Last, mit der ein Satz bei {from} bis {to} Wiederholungen endet.',
    source: 'Spanne: gängige Praxis; Lasten im Vergleich: Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  repsForStrength: {
    what: '{exercise}: {reps, plural, one {# Wiederholung} other {# Wiederholungen}} je Satz geplant, und das Ziel ist Kraft.',
    why: 'Die Kraft in einer Übung folgt am engsten der Last, und schwere Lasten lassen nur wenige Wiederholungen zu.',
    suggestion: 'Wähl eine Last, mit der ein Satz bei {from} bis {to} Wiederholungen endet.',
    source: 'Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  effort: {
    what: '{exercise}: Geplant ist, mit {reps, number, ::.##} Wiederholungen in Reserve aufzuhören.',
    why: 'Für den Muskelaufbau bringen Sätze, die näher am Versagen enden, tendenziell etwas mehr.',
    suggestion: 'Leg Last oder Wiederholungen zu, bis etwa {enough} in Reserve bleiben, solange die Technik hält.',
    source: 'Refalo et al. 2023, Sports Med 53:649',
  },
  order: {
    what: 'Zuerst {earlier}, dann {later}; beide trainieren dasselbe: {muscles}.',
    why: 'Was zuerst trainiert wird, gewinnt am meisten Kraft; die größere Übung beginnt dann mit müden Muskeln.',
    suggestion: 'Besser zuerst: {later}; es sei denn, {earlier} ist dir wichtiger.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149; Simão et al. 2010, J Sports Sci Med 9:1',
  },
  loadOrder: {
    what: 'Zuerst {earlier} mit {more, number} Wiederholungen, dann {later}, schwerer, mit {fewer, number}; beide trainieren dasselbe: {muscles}.',
    why: 'Schwere Arbeit verlangt frische Muskeln und einen frischen Kopf; was zuerst kommt, gewinnt am meisten Kraft.',
    suggestion: 'Besser zuerst: {later}.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149',
  },
  setOrder: {
    what: '{exercise}: Die Last steigt über die gefilmten Sätze, der schwerste kommt also zuletzt und müde.',
    why: 'Für die Kraft lehrt der schwerste Satz am meisten, solange die Technik frisch ist.',
    suggestion: 'Wärm dich bis zum schwersten Satz auf, mach ihn zuerst und nimm dann für die anderen Last weg.',
    source: 'gängige Praxis',
  },
  doubledLoad: {
    what: '{one} und {other}: Beides ist schwere Arbeit für dieselben Muskeln ({muscles}).',
    why: 'Weitere Sätze bringen immer weniger, und die zweite Übung wird müde gemacht: Ihre Technik leidet zuerst.',
    suggestion:
      'Halbier beide: {one} auf {ones, plural, one {# Satz} other {# Sätze}}, {other} auf {others, plural, one {# Satz} other {# Sätze}}; oder verleg eine auf einen anderen Tag.',
    source: 'Halbieren: gängige Praxis; fallender Ertrag: Pelland et al. 2025, Sports Med',
  },
  shortEndLoad: {
    what: '{exercise}: am schwersten, wo die Muskeln am kürzesten sind, und leicht, wo sie lang sind.',
    why: longLengths,
    suggestion:
      'Stell diese Übung daneben oder an ihre Stelle: {better}.{count, plural, =0 {} other { Danach, der Reihe nach: {others}.}}',
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1); Maeo et al. 2021, Med Sci Sports Exerc 53:825',
  },
  shortEndPause: {
    what: '{exercise}: mit einer Pause am kurzen Ende geplant ({shortEnd}) und ohne eine am langen Ende.',
    why: 'Am kurzen Ende dieser Übung ruhen die Muskeln; eine Pause dort macht den Satz leichter, nicht besser.',
    suggestion: 'Verleg die Pause ans lange Ende ({longEnd}) oder lass sie weg.',
    source: 'gängige Praxis',
  },
  shortHolds: {
    what: 'Jedes Halten liegt am kurzen Ende ({muscle}): {exercises}.',
    why: 'Kraft aus dem Halten bleibt nahe dem gehaltenen Winkel, und Halten bei großer Muskellänge überträgt sich weiter.',
    suggestion: 'Verleg eines davon ans lange Ende.',
    source: 'Oranchuk et al. 2019, Scand J Med Sci Sports 29:484',
  },
  curtailedRange: {
    what: '{exercise}: Hier endet der Weg, bevor die Muskeln am längsten sind ({by}).',
    why: longLengths,
    suggestion: 'Stell diese Übung daneben oder an ihre Stelle, sofern der kürzere Weg keinen Grund hat: {better}.',
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  profileBalance: {
    what: 'Alle {count, number} Übungen für einen Muskel sind am schwersten, wo er kurz ist: {muscle}.',
    why: 'Ein Muskel, der am langen Ende nie schwer belastet wird, verpasst den Teil des Weges, der Muskeln in Studien mindestens ebenso gut hat wachsen lassen.',
    suggestion: 'Tausch eine davon gegen eine Übung, die am langen Ende schwer ist.',
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  weeklyVolume: {
    what: 'Mehr als 20 Sätze in dieser Woche: {muscles}.',
    why: 'Über etwa 20 Sätze in der Woche hinaus gewannen die meisten Muskeln in Studien nichts mehr dazu, und erholen musst du dich von jedem Satz.',
    suggestion: 'Sieh nach, wie die Erholung läuft, und streich die Sätze, die sich nach bloßem Abarbeiten anfühlen.',
    source: 'Pelland et al. 2025, Sports Med; Metaanalyse von 2022 an trainierten Männern (12 bis 20 Sätze)',
  },
  spacing: {
    what: 'Harte Sätze weniger als zwei Tage nach den letzten: {muscles}.',
    why: 'Nach Sätzen nahe am Versagen brauchen die meisten ein bis zwei Tage, bis dieselben Muskeln wieder so viel leisten.',
    suggestion: 'Lass einen Tag dazwischen oder behalte an einem der beiden Tage mehr in Reserve.',
    source: 'Morán-Navarro et al. 2017, Eur J Appl Physiol 117:2387',
  },
} satisfies Readonly<Record<FindingMessageId, FindingWording>>;
