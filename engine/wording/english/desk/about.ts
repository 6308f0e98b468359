/** What the program says of itself. */
export const about = {
  title: 'About Rackside',
  version: 'Version {version}',
  build: 'Build {commit}, {date}',
  checkout: 'Run from its source code',
  runtime: 'Electron {electron}, Chromium {chromium}',
  outdated:
    'This runtime is out of date and gets no security fixes. Rackside uses it only where no current one is available, and keeps it off every network.',
  data: 'Data folder: {folder}',
  updates:
    'Rackside never checks for updates and never updates itself. Its download page shows whether there is a newer version; installing that over this one keeps the library.',
  licence: 'Rackside is free software under the MIT licence.',
  showNotices: 'Show third-party notices',
  notices: 'Third-party notices',
  noNotices:
    'The third-party notices are missing from this copy of Rackside. They are in the file THIRD-PARTY.md on its download page.',
} as const;

export type AboutMessageId = keyof typeof about;
