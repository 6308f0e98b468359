/** What the program says of itself. */
export const about = {
  title: 'About Rackside',
  version: 'Version {version}',
  build: 'Build {commit}, {date}',
  checkout: 'Started from its sources',
  runtime: 'Electron {electron}, Chromium {chromium}',
  outdated:
    'This runtime is out of date: it serves where the present one can’t be had, and gets no security fixes. Rackside keeps it off every network.',
  data: 'The data lie in {folder}',
  updates:
    'Rackside never looks for a newer version and never updates itself. To look, open the page it came from and compare the version there with the one above. Installing the newer one over this one keeps the library.',
  licence: 'Rackside is free software under the MIT licence.',
  showNotices: 'Show the notices of what others made',
  notices: 'Notices of what others made',
  noNotices:
    'The notices did not come with this program. They are in the file THIRD-PARTY.md on the page it came from.',
} as const;

export type AboutMessageId = keyof typeof about;
