import type { AgreementMessageId } from '../../english/desk/agreement.ts';

export const agreement: Readonly<Record<AgreementMessageId, string>> = {
  agreement: 'Übereinstimmung',
  desk: 'Übersicht',
  empty:
    'Wähl zwei Urteile über dieselben Clips: {voice, select, self {das einer Einheit und das meiner Zweitbewertung oder das eines Coachs} other {die von zwei Coachs oder Erst- und Zweitbewertung eines Coachs}}.',
  first: 'Erstes Urteil',
  second: 'Zweites Urteil',
  chooseSession: 'Einheit wählen',
  file: 'Datei {name}',
  colleaguesFile: '{voice, select, self {Bewertungsdatei eines Coachs} other {Bewertungsdatei eines anderen Coachs}}',
  reviewFile: 'Bewertungsdatei',
  notRead:
    '„{name}“ lässt sich nicht als Bewertungsdatei von höchstens 5 MB lesen. Es wurde nichts verglichen; wähl eine andere Datei.',
  howFar: 'Wie weit sie übereinstimmen',
  byCriterion: 'Nach Kriterien, mit 95-%-Intervallen',
  bySeverity: 'Nach Schwere: Wurde sie an denselben Stellen vergeben?',
  criterion: 'Kriterium',
  severity: 'Schwere',
  all: 'Alle',
  moments: 'Stellen',
  moment: 'Stelle',
  same: 'Gleich',
  kappa: 'Kappa',
  quadraticKappa: 'Kappa, quadratisch',
  ac1: 'AC1',
  alpha: 'Alpha, ordinal',
  intraclass: 'ICC(2,1) der Punkte',
  firstShort: 'Erstes',
  secondShort: 'Zweites',
  both: 'Beide',
  noSpread: 'keine Streuung',
  tooFew: 'zu wenige Werte',
  interval: '{low} bis {high}',
  whatFiguresMean: 'Was die Zahlen bedeuten',
  momentMeans:
    'Ein Kriterium in einer Wiederholung, die in beiden Urteilen angesehen ist. Es zählt die schwerste Bemerkung, die dort steht.',
  sameMeans:
    'Wie viele Stellen dieselbe Schwere haben. Leicht zu lesen; wo selten etwas bemerkt wird, kommt sie aber schon durch Zufall zustande.',
  kappaMeans:
    'Übereinstimmung über den Zufall hinaus: 1 ist vollständig, 0 nicht besser als Zufall. Niedrig, wenn eine Schwere selten ist.',
  quadraticKappaMeans:
    'Dasselbe, nur zählt „feinschleifen“ gegen „anpassen“ als kleinerer Unterschied als „feinschleifen“ gegen „Stopp“.',
  ac1Means: 'Übereinstimmung über den Zufall hinaus, die auch trägt, wenn fast alles passt.',
  alphaMeans: 'Übereinstimmung in der Reihenfolge der Schwere. Ab 0,80 gilt sie üblicherweise als verlässlich.',
  intraclassMeans:
    'Wie nah die Punkte der Wiederholungen beieinanderliegen. Wer durchweg strenger urteilt, senkt den Wert.',
  intervalsMean:
    'Die kleineren Zahlen sind 95-%-Intervalle. Bei wenigen Stellen sind sie breit, bei zu wenigen gibt es keine. Ein einzelner Satz sagt wenig, mehrere Einheiten sagen mehr.',
  nothingInBoth: 'Noch gibt es nichts zu vergleichen: Keine Stelle ist in beiden Urteilen angesehen.',
  sameOf:
    '{share} der {moments, plural, one {einen Stelle, die in beiden Urteilen angesehen ist, haben} other {# Stellen, die in beiden Urteilen angesehen sind, haben}} dieselbe Schwere.',
  noKappa: 'Ein Kappa gibt es nicht: In beiden Urteilen steht durchweg dieselbe Schwere.',
  beyondChance:
    'Über den Zufall hinaus ist die Übereinstimmung {band, select, poor {schlecht} slight {gering} fair {ausreichend} moderate {mittelmäßig} substantial {beachtlich} other {fast vollkommen}} (Kappa {kappa}; Stufen nach Landis und Koch, 1977).',
  scoresHigher: 'Das {which, select, first {erste} other {zweite}} Urteil gibt im Mittel {points} Punkte mehr.',
  oneAlone: 'Ausgelassen, weil nur in einem Urteil angesehen: {first} im ersten, {second} im zweiten.',
  unpaired:
    '{count, plural, one {# Wiederholung ist} other {# Wiederholungen sind}} nur in einem der beiden Urteile markiert; zugeordnet wird nach der Zeit.',
  whereTheyDiffer: 'Worin sie sich unterscheiden',
  noDifference: 'In nichts: Jede Stelle, die in beiden Urteilen angesehen ist, hat dieselbe Schwere.',
  differencesCaption: 'Verschieden beurteilte Stellen, der größte Unterschied zuerst',
  momentOf: '{criterion}, {rep}',
  clipOf: '{exercise}, {clip}',
  wholeSet: 'ganzer Satz',
  rep: 'Wiederholung {rep}',
  repOfBoth: 'Wiederholung {rep} (im zweiten Wiederholung {secondRep})',
};
