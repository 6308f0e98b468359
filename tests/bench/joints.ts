import { openJointReader } from '../../electron/backend/measure/joints/jointReader.ts';
import { chooseNetworkRoute, openNetworks } from '../../electron/backend/measure/joints/networkRoute.ts';
import { type Networks, sources } from '../../electron/backend/measure/joints/networks.ts';
import { probeClip } from '../../electron/backend/media/probe/probeClip.ts';
import { readPictures } from '../../electron/backend/media/read/readPictures.ts';
import { findMediaTools } from '../../electron/backend/media/tools/mediaTools.ts';
import { findClip } from '../electron/backend/media/clips.ts';
import { type Bench, median, timed } from './bench.ts';

const rounds = 5;
const looks = 60;

const { side } = sources.one;
const rgb = new Int32Array(3 * side * side).map((_, i) => (i * 7919) % 256);

/** Milliseconds that the network takes for one picture. */
const lookingMs = async ({ one }: Networks, pictures: number): Promise<number> =>
  (await timed(async () => {
    for (let i = 0; i < pictures; i += 1) await one(rgb, side);
  })) / pictures;

const throwReason = (reason: unknown): never => {
  throw reason;
};

const perSecond = (ms: number) => (1000 / ms).toFixed(1);

/** Finding the lifter's joints in a clip, decoding included, against the network alone; natively and by WebAssembly. */
export const benchJoints: Bench = {
  name: 'joints',
  about: `looking for the lifter's joints in ${looks} frames, decoding included, with one thread`,
  run: async () => {
    const tools = await findMediaTools();
    const clip = findClip('squat-side');
    const { table, shown } = await probeClip(tools, clip);
    const native = await openNetworks(await chooseNetworkRoute(throwReason));
    const wasm = await openNetworks({ kind: 'wasm' });
    const reader = await openJointReader({ picture: shown, workers: 1, framesPerSecond: 30 });
    const readClip = async () => {
      for await (const { frame, bytes } of readPictures(tools, clip, {
        ...{ table, shown, planes: 'colour', lastFrame: looks - 1 },
      })) {
        await reader.push(frame, bytes);
      }
      await reader.finish();
    };
    try {
      const nativeMs: number[] = [];
      const wasmMs: number[] = [];
      const lookMs: number[] = [];
      await readClip();
      for (let round = 0; round < rounds; round += 1) {
        nativeMs.push(await lookingMs(native, looks / 2));
        wasmMs.push(await lookingMs(wasm, looks / 6));
        lookMs.push((await timed(readClip)) / looks);
      }
      const [bare, slower, whole] = [median(nativeMs), median(wasmMs), median(lookMs)];
      const look = `a look (${perSecond(whole)} a second on one core)`;
      return [
        { what: `${look} / the network alone (${perSecond(bare)})`, ratio: whole / bare, goal: 1.5 },
        { what: `${look} / one in a thirtieth of a second`, ratio: whole / (1000 / 30), goal: 1 },
        { what: 'the network natively / by WebAssembly', ratio: bare / slower, goal: 0.4 },
      ];
    } finally {
      await reader.close();
    }
  },
};
