import type { judging as english } from '../../english/problems/judging.ts';

export const judging = {
  clipGone: 'Dieser Clip ist nicht mehr in der Bibliothek. Es wurde nichts geändert.',
  copyElsewhere: 'Eine Bemerkung lässt sich nur innerhalb ihrer Einheit kopieren. Es wurde nichts geändert.',
  flagGone: 'Diese Bemerkung ist nicht mehr in der Einheit. Es wurde nichts geändert.',
  notJudgedBy: '„{exercise}“ wird nicht nach „{criterion}“ bewertet, es wurde nichts geändert.',
  faultUnknown: '„{fault}“ ist bei „{exercise}“ kein Fehler unter „{criterion}“, es wurde nichts geändert.',
  noFrame: 'Der Clip „{clip}“ hat kein Bild {frame}, es wurde nichts markiert. Wähl eine Stelle innerhalb des Clips.',
  repsNotMarked:
    'Wiederholung {rep} ist nicht markiert: Der Clip „{clip}“ hat {reps, plural, one {# Wiederholung} other {# Wiederholungen}}. Es wurde nichts geändert.',
  repNotMarked: 'Wiederholung {rep} ist in „{clip}“ nicht markiert. Es wurde nichts geändert.',
  noRepStarted:
    'Vor diesem Bild beginnt keine Wiederholung, deshalb wurde {edge, select, stretchedEnd {kein Umkehrpunkt} other {kein Ende}} gesetzt. Setz erst den Beginn.',
  repStartsHere:
    'Genau auf diesem Bild beginnt eine Wiederholung, deshalb wurde {edge, select, stretchedEnd {kein Umkehrpunkt} other {kein Ende}} gesetzt. Geh weiter in die Wiederholung hinein.',
  noEdge:
    'Wiederholung {rep} von „{clip}“ hat {edge, select, start {keinen Beginn} stretchedEnd {keinen Umkehrpunkt} other {kein Ende}} zum Verschieben. Es wurde nichts geändert.',
  edgeBeyond:
    '{edge, select, start {Der Beginn} stretchedEnd {Der Umkehrpunkt} other {Das Ende}} von Wiederholung {rep} kann nicht über die nächste Grenze hinaus und bleibt, wo {edge, select, start {er} stretchedEnd {er} other {es}} war. Verschieb erst die Grenze daneben.',
  reviewFull:
    '{what, select, entries {Eine Einheit fasst höchstens {most} Übungen} clips {Eine Übung fasst höchstens {most} Clips} flags {Eine Übung fasst höchstens {most} Bemerkungen} other {Ein Clip fasst höchstens {most} Wiederholungen}}; es wurde nichts geändert. Entferne erst etwas oder mach in einer anderen Einheit weiter.',
  drawingsFull: 'Der Clip „{clip}“ hat schon {most} Zeichnungen, es kam keine dazu. Entferne erst eine.',
  drawingGone: 'Diese Zeichnung ist nicht mehr auf dem Clip. Es wurde nichts geändert.',
  plumbSlants: 'Ein Lot ist senkrecht und dieses nicht, es wurde nichts gezeichnet. Zeichne eine Linie.',
  drawingEndsEarly: 'Die Zeichnung würde enden, bevor sie beginnt; es wurde nichts geändert.',
  coverAbsent:
    'Auf Bild {frame} liegt keine Abdeckung, es wurde nichts verschoben. Dehn die Abdeckung erst bis zu diesem Bild aus.',
  coverPlacesFull: 'Die Abdeckung hat schon {most} Positionen, es kam keine dazu.',
  coverEndsEarly: 'Die Abdeckung würde enden, bevor sie beginnt; es wurde nichts geändert.',
  noCoverPlace: 'Die Abdeckung hat auf Bild {frame} keine eigene Position. Es wurde nichts geändert.',
  onlyCoverPlace: 'Das ist die einzige Position der Abdeckung, sie bleibt. Entferne stattdessen die Abdeckung selbst.',
  coverGone: 'Diese Abdeckung ist nicht mehr auf dem Clip. Es wurde nichts geändert.',
  coverFollowsHead:
    'Diese Abdeckung folgt dem Kopf und lässt sich nicht verschieben. Leg zusätzlich einen Kasten darüber.',
  coversFull: 'Der Clip „{clip}“ hat schon {most} Abdeckungen, es kam keine dazu. Entferne erst eine.',
  headCovered: 'Der Kopf ist in „{clip}“ schon abgedeckt. Es wurde nichts geändert.',
  nothingToCover:
    'Das Video von „{clip}“ ist nicht in der Bibliothek, es gibt nichts abzudecken. Importier erst den Clip.',
  coverOutside: 'Der Kasten liegt außerhalb des Bildes und würde nichts abdecken. Es wurde nichts geändert.',
  suggestionGone:
    'Diesen Vorschlag gibt es für den Clip nicht mehr, es wurde nichts geändert. Sieh dir die Messwerte noch einmal an.',
  suggestedRepMissing:
    'Die gemessene Wiederholung {rep} gehört nicht zu den Wiederholungen des Clips, es wurde keine Bemerkung gesetzt. Übernimm erst die gemessenen Wiederholungen.',
  noRepsMeasured:
    'In „{clip}“ wurden keine Wiederholungen gemessen, es bleibt, wie es ist. Miss erst den Clip oder markier sie von Hand.',
  movementGone:
    'Diese Bewegung wird in „{clip}“ nicht mehr angeboten, es kam keine Wiederholung dazu. Markier sie von Hand.',
  clicksFull: '„{clip}“ hat schon {most} Klicks, es kam keiner dazu. Entferne erst die früheren.',
  nothingToFrame:
    'Das Video von „{clip}“ ist nicht in der Bibliothek, es gibt nichts zu drehen oder zu kürzen. Importier erst den Clip.',
  cropOutside: 'Der Ausschnitt reicht über das Bild hinaus; es wurde nichts geändert. Zieh ihn innerhalb des Bildes.',
  frameOutsideSection:
    'Bild {frame} liegt außerhalb des Abschnitts, den „{clip}“ zeigt; es wurde nichts markiert. Wähl eine Stelle innerhalb des Abschnitts.',
  sectionEndsEarly:
    'Der Abschnitt würde enden, bevor er beginnt; der Clip wurde nicht gekürzt. Setz das Ende weiter nach hinten oder den Beginn weiter nach vorn.',
  judgedOutside:
    'Außerhalb des Abschnitts liegen Bemerkungen oder Haken; „{clip}“ wurde nicht gekürzt. Verschieb oder entferne sie erst.',
  narratedAsItIs:
    'Der Audiokommentar zu „{clip}“ gehört zum Bild, wie es jetzt ist, deshalb wurde weder gedreht noch geschnitten. Lösch erst den Audiokommentar.',
  nothingToSplit:
    'Bei diesem Bild lässt sich „{clip}“ nicht teilen, es bleibt ein Clip. Geh weiter in den Clip hinein.',
} as const satisfies Readonly<Record<keyof typeof english, string>>;
