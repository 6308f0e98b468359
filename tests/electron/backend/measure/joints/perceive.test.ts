import { describe, expect, it } from 'vitest';
import { wayUpOf } from '../../../../../electron/backend/measure/joints/bodies.ts';
import { type Look, perceive } from '../../../../../electron/backend/measure/joints/perceive.ts';
import { boxOf } from '../../../../../engine/motion/joints/bodyBox.ts';
import { type Body, jointNames } from '../../../../../engine/recording/recording.ts';
import { type DrawnPerson, type DrawnPicture, drawnBody, drawnBytes, networksOf } from './drawnPeople.ts';

const hd = { width: 1280, height: 720 };
const lookAt = (picture: DrawnPicture, change: Partial<Look> = {}) => {
  const networks = networksOf(picture);
  const look: Look = {
    ...{ bytes: drawnBytes(picture), size: picture, guide: null, near: null },
    ...{ search: 'smallSquares', clicked: null, who: 'lifter', crops: null, ...change },
  };
  return perceive(networks, look).then((seen) => ({ ...seen, asked: networks.asked }));
};

/** The largest distance of a body's joints from where a person's are drawn, in heights of that person. */
function offBy(body: Body | null, person: DrawnPerson): number {
  if (body === null) return Number.POSITIVE_INFINITY;
  const drawn = drawnBody(person);
  return Math.max(
    ...jointNames.map((_, i) => {
      const [one, other] = [body[i], drawn[i]];
      return one && other ? Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx) / person.heightPx : Number.NaN;
    }),
  );
}

const guideAt = (person: DrawnPerson, passedS: number): Look['guide'] => {
  const body = drawnBody(person);
  const box = boxOf(body);
  return box && { body, box, passedS, wayUp: wayUpOf(body) };
};

describe('a picture with one person', () => {
  it.each([
    ['large', { feet: { xPx: 640, yPx: 700 }, heightPx: 650 }],
    ['of 60 pixels', { feet: { xPx: 310, yPx: 500 }, heightPx: 60 }],
    ['of 60 pixels in a corner', { feet: { xPx: 1240, yPx: 90 }, heightPx: 60 }],
    ['lying', { feet: { xPx: 400, yPx: 500 }, heightPx: 350, posture: 'lying' }],
    ['on the hands', { feet: { xPx: 700, yPx: 650 }, heightPx: 400, posture: 'onHands' }],
  ] as const)('shows somebody %s', async (_, person: DrawnPerson) => {
    const { lifter } = await lookAt({ ...hd, people: [person] });
    // The drawn picture tells a place to a few pixels.
    expect(offBy(lifter, person) * person.heightPx).toBeLessThan(10);
  });

  it('is looked at once when the lifter is where they were, and not searched when that is not asked for', async () => {
    const person = { feet: { xPx: 640, yPx: 600 }, heightPx: 400 };
    const { lifter, asked } = await lookAt({ ...hd, people: [person] }, { guide: guideAt(person, 0.13) });
    expect(offBy(lifter, person)).toBeLessThan(0.02);
    expect(asked).toEqual(['one']);
    const nobody = await lookAt({ ...hd, people: [] }, { guide: guideAt(person, 0.13), search: null });
    expect(nobody.lifter).toBeNull();
    expect(nobody.asked).toEqual(['one']);
  });

  it.each([
    [0.13, 0.15],
    [0.2, 0.3],
    [0.4, 0.55],
  ])('is followed over %s s by %s heights without a search', async (passedS, heights) => {
    const before = { feet: { xPx: 400, yPx: 600 }, heightPx: 300 };
    const person = { ...before, feet: { xPx: 400 + heights * 300, yPx: 600 } };
    const { lifter } = await lookAt({ ...hd, people: [person] }, { guide: guideAt(before, passedS), search: null });
    expect(offBy(lifter, person)).toBeLessThan(0.03);
  });

  it('shows nobody else when somebody is farther than they can have gone', async () => {
    const before = { feet: { xPx: 400, yPx: 600 }, heightPx: 300 };
    const other = { ...before, feet: { xPx: 580, yPx: 600 } };
    const { lifter } = await lookAt({ ...hd, people: [other] }, { guide: guideAt(before, 0.13), search: null });
    expect(lifter).toBeNull();
  });
});

describe('a picture with several people', () => {
  const left = { feet: { xPx: 300, yPx: 650 }, heightPx: 400 };
  const right = { feet: { xPx: 900, yPx: 640 }, heightPx: 360 };
  const people = [left, right];

  it('shows everybody once when asked for', async () => {
    const seen = await lookAt({ ...hd, people }, { who: 'everybody', guide: guideAt(left, 0.13) });
    expect(seen.people).toHaveLength(2);
    expect(offBy(seen.lifter, left)).toBeLessThan(0.02);
    const lefts = seen.people.filter((body) => offBy(body, left) < 0.05);
    const rights = seen.people.filter((body) => offBy(body, right) < 0.05);
    expect([lefts.length, rights.length]).toEqual([1, 1]);
  });

  it('shows the one at the bar', async () => {
    const { lifter } = await lookAt({ ...hd, people }, { near: { xPx: 940, yPx: 480 } });
    expect(offBy(lifter, right)).toBeLessThan(0.03);
  });

  it.each([
    ['the smaller one', right, 420],
    ['one of 60 pixels far behind', { feet: { xPx: 620, yPx: 300 }, heightPx: 60 }, 270],
  ] as const)('shows %s where the click is on them', async (_, clicked: DrawnPerson, yPx) => {
    const picture = { ...hd, people: [...people, clicked] };
    const at = { xPx: clicked.feet.xPx, yPx };
    const { lifter } = await lookAt(picture, { clicked: at, guide: guideAt(left, 0.13) });
    expect(offBy(lifter, clicked) * clicked.heightPx).toBeLessThan(10);
  });
});
