import type { Command } from 'commander';
import type { MediaTool } from '../../backend/media/tools/mediaTools.ts';
import { aboutFacts, readNotices } from '../../backend/report/about.ts';
import { example } from '../options/example.ts';
import { textPairs } from '../print/table.ts';
import type { Host } from '../run/host.ts';

/** `about`: versions of Rackside and of what it works with, and the notices of what others made. */
export function addAbout(program: Command, host: Host): void {
  program
    .command('about')
    .description('Shows the versions of Rackside and of what it uses: ffmpeg, ffprobe, Node, ONNX Runtime.')
    .option('--notices', 'print the third-party notices instead')
    .option('--json', 'print as JSON')
    .addHelpText('after', example('rackside about', 'rackside about --notices'))
    .action(async (options: { notices?: true; json?: true }) => {
      if (options.notices) {
        const text = readNotices(host.appFolder);
        host.print(options.json ? `${JSON.stringify({ notices: text })}\n` : text);
        return;
      }
      const { version, tools, node, onnxRuntime } = await aboutFacts(host.appFolder);
      const [ffmpeg, ffprobe] = [factsOf(tools?.ffmpeg), factsOf(tools?.ffprobe)];
      host.print(
        options.json
          ? `${JSON.stringify({ version, ffmpeg, ffprobe, node, onnxRuntime })}\n`
          : textPairs([
              ['Rackside', version],
              ['ffmpeg', lineOf(ffmpeg)],
              ['ffprobe', lineOf(ffprobe)],
              ['Node', node],
              ['ONNX Runtime', onnxRuntime],
              ['Licences', 'rackside about --notices'],
            ]),
      );
    });
}

const factsOf = (tool: MediaTool | undefined) =>
  tool === undefined ? null : { version: tool.version.label, path: tool.path, origin: tool.origin, reach: tool.reach };

const origins = { environment: 'named by the environment', path: 'found on PATH', bundled: 'bundled' } as const;
const reaches = {
  'own-files': 'reaches the files it is given and no network',
  'no-network': 'reaches no network',
  everything: 'reaches what you can',
} as const;

function lineOf(facts: ReturnType<typeof factsOf>): string {
  if (facts === null) return 'none that runs';
  return `${facts.version}, ${origins[facts.origin]}, ${reaches[facts.reach]}: ${facts.path}`;
}
