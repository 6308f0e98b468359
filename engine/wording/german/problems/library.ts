import type { library as english } from '../../english/problems/library.ts';

export const library = {
  isOpenAlready: 'Die Bibliothek ist schon geöffnet und bleibt, wie sie ist.',
  noLibraryYet: 'In diesem Ordner gibt es noch keine Bibliothek. Leg erst eine an.',
  libraryThere: 'In „{folder}“ gibt es schon eine Bibliothek. Sie bleibt, wie sie ist.',
  libraryNotWritable:
    'Die Bibliothek in „{folder}“ ließ sich nicht zum Schreiben öffnen, es wurde nichts geändert. Prüf den Ordner und ob genug Speicherplatz frei ist.',
  libraryReadOnly:
    'Die Bibliothek in „{folder}“ ist schreibgeschützt; sie wurde weder geöffnet noch geändert. Mach den Ordner beschreibbar und versuch es noch einmal oder öffne eine beschreibbare Kopie.',
  libraryAway:
    'Die Bibliothek in „{folder}“ wurde nicht gefunden, es wurde nichts geöffnet. Schließ ihr Laufwerk an oder leg den Ordner zurück und versuch es noch einmal, oder öffne im Menü eine andere Bibliothek.',
  libraryGone:
    'Die Bibliothek liegt nicht mehr in „{folder}“, deshalb wurde nichts gespeichert; was vorher gespeichert war, ist noch in diesem Ordner. Leg ihn zurück oder schließ sein Laufwerk wieder an und starte Rackside neu.',
  libraryBusy:
    'Die Bibliothek in „{folder}“ ist in einem anderen Rackside geöffnet, es wurde nichts geändert. Schließ das andere und versuch es noch einmal.',
  noLibraryFile:
    '„{file}“ ist keine Rackside-Bibliothek und wurde weder geöffnet noch geändert. Wähl einen anderen Ordner.',
  libraryNewer:
    'Die Bibliothek in „{folder}“ wurde mit einem neueren Rackside benutzt, deshalb bleibt sie hier unangetastet. Installier die neuere Version, um sie zu öffnen.',
  libraryUnknown:
    'Die Bibliothek stammt von einem Rackside, das dieses hier nicht kennt; es wurde nichts geändert. Öffne sie mit dem Rackside, aus dem sie stammt.',
  libraryDamaged:
    'Die Bibliothek in „{folder}“ ist beschädigt und wurde weder geöffnet noch geändert. Deine Clips sind sicher, und im Ordner „backups“ daneben liegt vielleicht eine unbeschädigte Kopie.',
  becameDamaged:
    'Die Bibliothek ist auf dem Datenträger beschädigt worden, deshalb ist nichts passiert. Beende Rackside und prüf den Datenträger.',
  sessionDamaged:
    'Ein Teil dieser Einheit ist durch einen Fehler des Datenträgers verändert, deshalb wird sie weder gezeigt noch geändert. Ihre Clips und alle anderen Einheiten sind sicher, und im Ordner „backups“ der Bibliothek liegt vielleicht eine unbeschädigte Kopie.',
  historyDamaged:
    'Der Verlauf dieser Einheit ist durch einen Fehler des Datenträgers verändert, deshalb wurde nichts rückgängig gemacht oder gezeigt. Die Clips sind sicher, und im Ordner „backups“ der Bibliothek liegt vielleicht eine unbeschädigte Kopie.',
  partDamaged:
    'Was die Bibliothek hierzu enthält, ist durch einen Fehler des Datenträgers verändert und wird nicht verwendet. Die Clips und alles andere sind sicher, und im Ordner „backups“ der Bibliothek liegt vielleicht eine unbeschädigte Kopie.',
  recordingDamaged:
    'Die Messung dieses Clips ist durch einen Fehler des Datenträgers verändert und wird nicht verwendet. Der Clip und seine Bemerkungen sind sicher. Miss ihn noch einmal.',
  insideLibrary: 'Dieser Ort gehört zur Bibliothek selbst, es wurde nichts geschrieben. Wähl einen anderen.',
  shippedUnreadable:
    'Die mitgelieferte Übungsbibliothek lässt sich nicht lesen ({place}). Deine eigene Bibliothek ist sicher; installier Rackside neu oder reparier diese Datei.',
  rubricUnfit:
    'Dieses Bewertungsraster passt nicht zur Übungsbibliothek ({place}), es wurde nichts bewertet. Ergänz, was fehlt.',
  noRubricVersion: 'Version {version} des Bewertungsrasters gibt es hier nicht. Es wurde nichts geändert.',
  folderGone: 'Den Ordner „{folder}“ gibt es nicht, es wurde nichts geschrieben. Wähl einen anderen.',
  isFolder: '„{file}“ ist ein Ordner, es wurde nichts geschrieben. Gib den Namen einer Datei an.',
  notWritten:
    '„{file}“ ließ sich nicht in „{folder}“ schreiben, dort wurde nichts geändert. Prüf, ob der Ordner beschreibbar ist und genug Platz hat.',
} as const satisfies Readonly<Record<keyof typeof english, string>>;
