import type { AboutMessageId } from '../../english/desk/about.ts';

export const about: Readonly<Record<AboutMessageId, string>> = {
  title: 'Über Rackside',
  version: 'Version {version}',
  build: 'Stand {commit}, {date}',
  checkout: 'Aus dem Quelltext gestartet',
  runtime: 'Electron {electron}, Chromium {chromium}',
  outdated:
    'Diese Laufzeitumgebung ist veraltet und bekommt keine Sicherheitsupdates mehr. Rackside nutzt sie nur, wo keine aktuelle zu haben ist, und hält sie von jedem Netz fern.',
  data: 'Datenordner: {folder}',
  updates:
    'Rackside sucht nie nach Updates und aktualisiert sich nie selbst. Ob es eine neuere Version gibt, zeigt die Downloadseite. Wird sie über diese installiert, bleibt die Bibliothek erhalten.',
  licence: 'Rackside ist freie Software unter der MIT-Lizenz.',
  showNotices: 'Hinweise zu fremder Software anzeigen',
  notices: 'Hinweise zu fremder Software',
  noNotices:
    'Die Hinweise fehlen in dieser Kopie von Rackside. Sie stehen in der Datei THIRD-PARTY.md auf der Downloadseite.',
};
