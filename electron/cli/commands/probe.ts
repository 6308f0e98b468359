import type { Command } from 'commander';
import { ticksToUs } from '../../../engine/time/moment.ts';
import { type ClipProbe, probeClip } from '../../backend/media/probe/probeClip.ts';
import { describeMediaTools, findMediaTools } from '../../backend/media/tools/mediaTools.ts';
import { example } from '../options/example.ts';
import { shortNumber } from '../print/numbers.ts';
import { textPairs } from '../print/table.ts';
import type { Host } from '../run/host.ts';

/** `probe FILE`: what a clip is. */
export function addProbe(program: Command, host: Host): void {
  program
    .command('probe')
    .description('Describes a clip: codec, size, rotation, frames and their times, and whether it plays as it is.')
    .argument('<file>', 'the clip')
    .option('--json', 'print as JSON, with the time of every frame')
    .addHelpText('after', example('rackside probe "my squat.mp4"', 'rackside probe clip.mov --json'))
    .action(async (file: string, options: { json?: true }) => {
      const tools = await findMediaTools();
      const path = host.resolve(file);
      const probe = await probeClip(tools, path, { signal: host.signal });
      host.print(
        options.json ? `${JSON.stringify(asJson(file, probe))}\n` : asTable(file, probe, describeMediaTools(tools)),
      );
    });
}

function asJson(file: string, probe: ClipProbe) {
  const { facts, table } = probe;
  return {
    file,
    codec: facts.codec,
    container: probe.container,
    width: facts.width,
    height: facts.height,
    rotationDeg: facts.rotationDeg,
    displayWidth: probe.shown.width,
    displayHeight: probe.shown.height,
    frames: facts.frames,
    durationS: facts.durationUs / 1_000_000,
    timeBase: `${facts.timeBase.numerator}/${facts.timeBase.denominator}`,
    constantRate: probe.constantRate,
    meanFps: probe.meanFps,
    captureFps: probe.captureFps,
    realTimeFactor: probe.realTimeFactor,
    hasAudio: probe.hasAudio,
    sizeBytes: probe.sizeBytes,
    plays: probe.plays,
    proxyReason: probe.proxyReason,
    times: table.ticks.map((ticks) => ticksToUs(ticks, table.timeBase) / 1_000_000),
    ticks: table.ticks,
  };
}

function asTable(file: string, probe: ClipProbe, tools: string): string {
  const { facts } = probe;
  const capture = probe.captureFps === null ? 'not stated' : `${shortNumber(probe.captureFps, 3)} per second`;
  return textPairs([
    ['File', `${file} (${shortNumber(probe.sizeBytes / 1_000_000, 2)} MB)`],
    ['Codec', `${facts.codec} in ${probe.container}${probe.hasAudio ? ', with sound' : ', no sound'}`],
    ['Size', `${facts.width} × ${facts.height} as coded, ${probe.shown.width} × ${probe.shown.height} upright`],
    ['Rotation', facts.rotationDeg === 0 ? 'none' : `${facts.rotationDeg}° clockwise`],
    ['Frames', String(facts.frames)],
    ['Duration', `${(facts.durationUs / 1_000_000).toFixed(3)} s`],
    ['Time base', `${facts.timeBase.numerator}/${facts.timeBase.denominator} s`],
    [
      'Rate',
      `${probe.constantRate ? 'constant' : 'variable'}, ${shortNumber(probe.meanFps, 3)} frames per second on average`,
    ],
    ['Captured at', capture],
    [
      'Slowed by',
      probe.realTimeFactor === 1 ? 'nothing: clip time is real time' : `${shortNumber(probe.realTimeFactor, 3)}`,
    ],
    ['Plays', probe.plays === 'as-is' ? 'as it is' : `needs a playable copy: ${probe.proxyReason}`],
    ['Read with', tools],
  ]);
}
