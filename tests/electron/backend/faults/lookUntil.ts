import { readdirSync, readFileSync, readlinkSync } from 'node:fs';
import { recordMotion } from '../../../../electron/backend/measure/recordMotion.ts';
import { probeClip } from '../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';

/** Looks for the joints in a clip, cancels once it is as far as was given (0-1), and ends; prints the network sockets it held. */
const [clip = '', share = ''] = process.argv.slice(2);
const tools = await findMediaTools();
const { table, shown, meanFps } = await probeClip(tools, clip);
const order = {
  tools,
  clip,
  table,
  shown,
  framesPerSecond: meanFps,
  clicks: [],
  courtesy: 'nobody',
  wanted: ['joints'],
  threads: 2,
} as const;
const sockets = new Set<string>();
const stopping = new AbortController();
await recordMotion(order, {
  signal: stopping.signal,
  onProgress: (done) => {
    for (const socket of networkSockets()) sockets.add(socket);
    if (done >= Number(share)) stopping.abort();
  },
}).catch((error: unknown) => {
  if (!stopping.signal.aborted) throw error;
});
process.stdout.write([...sockets].join('\n'));
process.exit(0);

/** This process's sockets in the system's tables of TCP and UDP (Linux). */
function networkSockets(): readonly string[] {
  const held = new Set(readdirSync('/proc/self/fd').flatMap(inodeOf));
  return ['tcp', 'tcp6', 'udp', 'udp6'].flatMap((table) =>
    readFileSync(`/proc/self/net/${table}`, 'utf8')
      .split('\n')
      .slice(1)
      .filter((line) => held.has(line.trim().split(/\s+/)[9] ?? ''))
      .map((line) => `${table} ${line.trim()}`),
  );
}

/** The number of the socket behind an open file; none when it is something else, or closed meanwhile. */
function inodeOf(file: string): readonly string[] {
  try {
    return /^socket:\[(\d+)\]$/.exec(readlinkSync(`/proc/self/fd/${file}`))?.slice(1) ?? [];
  } catch {
    return [];
  }
}
