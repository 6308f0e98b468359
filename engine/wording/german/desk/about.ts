import type { AboutMessageId } from '../../english/desk/about.ts';

export const about: Readonly<Record<AboutMessageId, string>> = {
  title: 'Über Rackside',
  version: 'Version {version}',
  build: 'Stand {commit}, {date}',
  checkout: 'Aus dem Quelltext gestartet',
  runtime: 'Electron {electron}, Chromium {chromium}',
  outdated:
    'Diese Laufzeit ist veraltet: Sie springt ein, wo die aktuelle nicht zu haben ist, und bekommt keine Sicherheitsupdates mehr. Rackside hält sie von jedem Netz fern.',
  data: 'Die Daten liegen in {folder}',
  updates:
    'Rackside sucht nie nach einer neueren Version und aktualisiert sich nie selbst. Zum Nachsehen die Seite öffnen, von der es kommt, und die Version dort mit der oben vergleichen. Wird die neue darüber installiert, bleibt die Bibliothek erhalten.',
  licence: 'Rackside ist freie Software unter der MIT-Lizenz.',
  showNotices: 'Hinweise zu fremder Software anzeigen',
  notices: 'Hinweise zu fremder Software',
  noNotices:
    'Die Hinweise lagen diesem Programm nicht bei. Sie stehen in der Datei THIRD-PARTY.md auf der Seite, von der es kommt.',
};
