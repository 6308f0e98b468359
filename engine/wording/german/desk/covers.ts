import type { CoverMessageId } from '../../english/desk/covers.ts';

export const covers: Readonly<Record<CoverMessageId, string>> = {
  covers: 'Abdeckungen',
  done: 'Fertig',
  intro:
    'Ein dunkler Kasten verdeckt in jedem Clip, jeder Schleife und jedem Standbild der Übergabe, was unter ihm liegt, und der Originalclip bleibt hier. Nimm ihn für Gesichter. Ein Mosaik ist kein sicherer Schutz: Ein Gesicht kann erkennbar bleiben.',
  how: 'Zieh einen Kasten über ein Gesicht oder einen Bereich. Geh dann Bild für Bild weiter und zieh ihn mit; zwischen zwei Positionen bewegt er sich gleichmäßig.',
  add: 'Abdeckung in die Bildmitte setzen',
  addHead:
    '{voice, select, self {Meinen Kopf abdecken (folgt den Gelenken)} other {Kopf des Athleten abdecken (folgt den Gelenken)}}',
  jointsUnknown: 'Damit der Kopf automatisch abgedeckt wird, miss diesen Clip zuerst ({key}).',
  byKeys:
    'Mit der Tastatur: Pfeiltasten bewegen den ausgewählten Kasten, Alt mit Pfeiltaste ändert seine Größe, Entf löscht ihn. {back} und {on} gehen Bild für Bild.',
  nothing: 'In diesem Clip ist noch nichts abgedeckt.',
  list: 'Abdeckungen in diesem Clip',
  box: 'Abdeckung {number}: {look, select, filled {dunkler Kasten} other {Mosaik}}',
  head: 'Abdeckung {number}: Kopf, {look, select, filled {dunkler Kasten} other {Mosaik}}',
  placed: '{count, plural, one {# Position} other {# Positionen}}',
  byJoints: 'folgt den Gelenken',
  wholeSpan: '{where}, ganzer Clip',
  fromSpan: '{where}, ab {from}',
  untilSpan: '{where}, bis {until}',
  span: '{where}, von {from} bis {until}',
  remove: 'Entfernen: {cover}',
  headLost:
    'Der Kopf ist in diesem Clip nicht zu finden. Solange diese Abdeckung besteht, wird nichts von dem Clip übergeben.',
  look: 'Aussehen der Abdeckung',
  filled: 'Dunkler Kasten (für Gesichter)',
  mosaic: 'Mosaik',
  fromHere: 'Ab hier',
  untilHere: 'Bis hier',
  wholeClip: 'Ganzer Clip',
  placedHere: 'Der Kasten wurde in diesem Bild platziert.',
  notPlacedHere: 'Der Kasten wurde in diesem Bild nicht platziert: Verschieb ihn, um ihn hier zu platzieren.',
  notCovering: 'Dieses Bild deckt der Kasten nicht ab.',
  removePlace: 'Diese Position entfernen',
};
