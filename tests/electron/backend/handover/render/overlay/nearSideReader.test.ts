import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import * as v from 'valibot';
import { afterAll, describe, expect, it } from 'vitest';
import { nearSideReader } from '../../../../../../electron/backend/handover/render/overlay/nearSideReader.ts';
import { pictureWords, renderStills } from '../../../../../../electron/backend/handover/render/pictures/stills.ts';
import { findMediaTools } from '../../../../../../electron/backend/media/tools/mediaTools.ts';
import type { Recording } from '../../../../../../engine/recording/recording.ts';
import { setUpSchema } from '../../../../../../engine/recording/setUp.ts';
import { bodiesOf, knownLifter } from '../../../../../engine/motion/joints/knownLifter.ts';
import { measuredClip, noteAt, rgbOf } from '../../shownClip.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-body-'));
afterAll(() => rmSync(folder, { recursive: true }));

const lifter = knownLifter('squat-side');
const recording: Recording = {
  ...{ disc: null, point: null, warnings: [] },
  joints: { method: 'recorded', everyFrames: lifter.everyFrames, frames: [...bodiesOf(lifter)] },
};
const setUp = v.parse(setUpSchema, { facing: lifter.nearSide });

describe('the lifter’s near side in a picture', () => {
  it('has the bend of the knee and the lean of the trunk where the rep turns', async () => {
    const { table, shown } = await measuredClip('squat-side');
    const read = nearSideReader(recording, { table, shown, setUp, view: null, rollDeg: 0 });
    for (const rep of lifter.reps) {
      const body = read?.(rep.farFrame);
      expect(Math.abs((body?.kneeDeg ?? 0) - rep.kneeDeg)).toBeLessThan(12);
      // Hip crease and top of the knee are on the skin, some ten centimetres from the joints.
      const [x, y] = rep.kneeTopPx;
      expect(Math.hypot((body?.knee?.x ?? 0) - x, (body?.knee?.y ?? 0) - y)).toBeLessThan(0.1 / lifter.metresPerPixel);
    }
  });

  it('is drawn as a line from hip to knee', async () => {
    const plain = { ...(await measuredClip('squat-side')), measurement: null };
    const read = nearSideReader(recording, { ...plain, setUp, view: null, rollDeg: 0 });
    const { farFrame } = lifter.reps[0] ?? { farFrame: 0 };
    const { hip, knee } = read?.(farFrame) ?? { hip: null, knee: null };
    if (!read || !hip || !knee) throw new Error('no leg was read');
    const rgbWith = async (body: typeof read | null) => {
      const [still] = await renderStills(await findMediaTools(), { ...plain, body }, [noteAt(farFrame)], {
        words: pictureWords('en'),
      });
      const file = path.join(folder, 'still.jpg');
      writeFileSync(file, still?.jpeg ?? new Uint8Array());
      return rgbOf(file);
    };
    const lightAlong = (rgb: Buffer) =>
      [0.3, 0.4, 0.5, 0.6].map((share) => {
        const [column, row] = [hip.x + share * (knee.x - hip.x), hip.y + share * (knee.y - hip.y)].map(Math.floor);
        return rgb[3 * ((row ?? 0) * plain.shown.width + (column ?? 0))] ?? 0;
      });
    const bare = lightAlong(await rgbWith(null));
    expect(lightAlong(await rgbWith(read)).every((light, place) => light > (bare[place] ?? 255) + 40)).toBe(true);
  });
});
