import { openJointReader } from '../../electron/backend/measure/joints/jointReader.ts';
import { loadNetworks } from '../../electron/backend/measure/joints/networks.ts';
import { probeClip } from '../../electron/backend/media/probe/probeClip.ts';
import { readPictures } from '../../electron/backend/media/read/readPictures.ts';
import { findMediaTools } from '../../electron/backend/media/tools/mediaTools.ts';
import { findClip } from '../electron/backend/media/clips.ts';
import { type Bench, median, timed } from './bench.ts';

const rounds = 5;
const looks = 60;

/** Finding the lifter's joints in a clip, decoding included, against the network alone on one thread. */
export const benchJoints: Bench = {
  name: 'joints',
  about: `looking for the lifter's joints in ${looks} frames, decoding included, with one thread`,
  run: async () => {
    const tools = await findMediaTools();
    const clip = findClip('squat-side');
    const { table, shown } = await probeClip(tools, clip);
    const { one } = await loadNetworks();
    const rgb = new Int32Array(3 * 256 * 256).map((_, i) => (i * 7919) % 256);
    const reader = openJointReader({ picture: shown, workers: 1 });
    const readClip = async () => {
      for await (const { frame, bytes } of readPictures(tools, clip, {
        ...{ table, shown, planes: 'colour', lastFrame: looks - 1 },
      })) {
        await reader.push(frame, bytes);
      }
      await reader.finish();
    };
    try {
      const bare: number[] = [];
      const whole: number[] = [];
      for (let round = 0; round < rounds; round += 1) {
        bare.push(
          await timed(() => {
            for (let i = 0; i < looks / 2; i += 1) one(rgb, 256);
          }),
        );
        whole.push(await timed(readClip));
      }
      const bareMs = median(bare) / (looks / 2);
      const lookMs = median(whole) / looks;
      const perSecond = (ms: number) => (1000 / ms).toFixed(1);
      const what = `a look (${perSecond(lookMs)} a second on one core) / the network alone (${perSecond(bareMs)})`;
      return [{ what, ratio: lookMs / bareMs, goal: 1.25 }];
    } finally {
      await reader.close();
    }
  },
};
