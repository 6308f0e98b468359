import type { MenuMessageId } from '../../english/desk/menu.ts';

export const menu: Readonly<Record<MenuMessageId, string>> = {
  file: '&Datei',
  openLibrary: 'Andere Bibliothek öffnen …',
  recentLibraries: 'Zuletzt geöffnete Bibliotheken',
  close: 'Fenster schließen',
  quit: 'Beenden',
  edit: '&Bearbeiten',
  undo: 'Rückgängig',
  redo: 'Wiederherstellen',
  cut: 'Ausschneiden',
  copy: 'Kopieren',
  paste: 'Einfügen',
  selectAll: 'Alles auswählen',
  view: '&Ansicht',
  zoomIn: 'Vergrößern',
  zoomOut: 'Verkleinern',
  resetZoom: 'Originalgröße',
  fullScreen: 'Vollbild',
  language: '&Sprache',
  help: '&Hilfe',
  about: 'Über Rackside',
};
