import { describe, expect, it } from 'vitest';
import { lifterPlaces } from '../../../../../electron/backend/measure/joints/lifterPlaces.ts';
import { personTracks, type Round } from '../../../../../electron/backend/measure/joints/personTracks.ts';
import { boxOf, middleOf } from '../../../../../engine/motion/joints/bodyBox.ts';
import type { Body, PointPx } from '../../../../../engine/recording/recording.ts';
import { type DrawnPerson, drawnBody } from './drawnPeople.ts';

const picture = { width: 1280, height: 720 };
const everyS = 0.7;
const framesPerSecond = 30;

/** Rounds of a clip of `seconds`, in which each person is where they are at the moment; null = not seen then. */
function roundsOf(seconds: number, people: readonly ((atS: number) => DrawnPerson | null)[]): Round[] {
  return Array.from({ length: Math.floor(seconds / everyS) + 1 }, (_, i) => ({
    frame: Math.round(i * everyS * framesPerSecond),
    atS: i * everyS,
    followed: null,
    people: people.flatMap((person) => {
      const drawn = person(i * everyS);
      return drawn === null ? [] : [drawnBody(drawn)];
    }),
  }));
}

/** A rep takes three seconds; 0 at its top, 1 at its bottom. */
const downAt = (atS: number): number => (1 - Math.cos((2 * Math.PI * atS) / 3)) / 2;
const squatter =
  (xPx: number, heightPx = 400) =>
  (atS: number): DrawnPerson => ({
    feet: { xPx, yPx: 660 },
    heightPx,
    squat: downAt(atS),
  });
const stands =
  (xPx: number, heightPx = 400) =>
  (): DrawnPerson => ({ feet: { xPx, yPx: 660 }, heightPx });

const evidence = (rounds: readonly Round[], bar: (frame: number) => PointPx | null = () => null) => ({
  picture,
  rounds: rounds.length,
  bar,
});
const middleX = (body: Body): number => {
  const box = boxOf(body);
  return box === null ? Number.NaN : middleOf(box).xPx;
};
const xAt = (places: ReturnType<typeof lifterPlaces>, atS: number): number => {
  const place = places.at(atS);
  return place === null ? Number.NaN : middleOf(place.box).xPx;
};

describe('people in picture after picture', () => {
  it('become one track each, also where they stand close together and come in another order', () => {
    const rounds = roundsOf(12, [squatter(400), stands(520)]).map((round, i) =>
      i % 2 === 0 ? round : { ...round, people: [...round.people].reverse() },
    );
    const tracks = personTracks(rounds);
    expect(tracks).toHaveLength(2);
    for (const track of tracks) {
      const xs = track.map(({ body }) => middleX(body));
      expect(Math.max(...xs) - Math.min(...xs)).toBeLessThan(30);
      expect(track).toHaveLength(rounds.length);
    }
  });

  it('are the same person after a gap of two seconds, and somebody new after five', () => {
    const gone = (fromS: number, toS: number) => (atS: number) => (atS > fromS && atS < toS ? null : stands(500)());
    expect(personTracks(roundsOf(14, [gone(5, 7)]))).toHaveLength(1);
    expect(personTracks(roundsOf(14, [gone(5, 10)]))).toHaveLength(2);
  });
});

describe('who lifts, over the whole clip', () => {
  it.each([
    ['a larger spotter who stands', stands(900, 560)],
    ['a picture on the wall', stands(1100, 600)],
    ['somebody who walks by', (atS: number): DrawnPerson | null => ({ ...stands(100 + 120 * atS, 450)() })],
    ['a mirror image further back', squatter(900, 200)],
    ['somebody who comes late and is as busy', (atS: number) => (atS < 9 ? null : squatter(900)(atS))],
  ] as const)('is the one who goes down and up, beside %s', (_, other: (atS: number) => DrawnPerson | null) => {
    const rounds = roundsOf(12, [other, squatter(400)]);
    const places = lifterPlaces(rounds, [], evidence(rounds));
    for (const atS of [0, 3.3, 7, 12]) expect(Math.abs(xAt(places, atS) - 400)).toBeLessThan(20);
  });

  it('is the one with whom the bar goes, of two who train beside each other', () => {
    const later = (atS: number) => squatter(900)(atS + 1.5);
    const rounds = roundsOf(12, [squatter(400), later]);
    const barOf = (person: (atS: number) => DrawnPerson) => (frame: number) => {
      const shoulder = drawnBody(person(frame / framesPerSecond))[5];
      return shoulder === undefined ? null : { xPx: 650, yPx: shoulder.yPx };
    };
    expect(xAt(lifterPlaces(rounds, [], evidence(rounds, barOf(squatter(400)))), 6)).toBeLessThan(500);
    expect(xAt(lifterPlaces(rounds, [], evidence(rounds, barOf(later))), 6)).toBeGreaterThan(800);
  });

  it('stays the one who was followed, where another is as likely', () => {
    for (const followed of [0, 1] as const) {
      const rounds = roundsOf(12, [squatter(400), squatter(900)]).map((round) => ({
        ...round,
        followed: round.people[followed] ?? null,
      }));
      expect(Math.abs(xAt(lifterPlaces(rounds, [], evidence(rounds)), 6) - (followed === 0 ? 400 : 900))).toBeLessThan(
        20,
      );
    }
  });

  it('tells which bodies are of somebody else, and of whom nothing is known', () => {
    const rounds = roundsOf(12, [stands(900, 560), squatter(400)]);
    const places = lifterPlaces(rounds, [], evidence(rounds));
    expect(places.isOther(drawnBody(stands(905, 560)()), 5)).toBe(true);
    expect(places.isOther(drawnBody(squatter(405)(5)), 5)).toBe(false);
    // A body where nobody else was seen may be the lifter all the same.
    expect(places.isOther(drawnBody(stands(60, 100)()), 5)).toBe(false);
    expect(lifterPlaces([], [], evidence([])).at(1)).toBeNull();
  });
});

describe('a click on the lifter', () => {
  const rounds = roundsOf(12, [squatter(400), stands(900, 500)]);
  const click = (xPx: number) => ({ frame: 21, atS: 0.7, at: { xPx, yPx: 450 } });

  it('wins over who goes up and down', () => {
    const places = lifterPlaces(rounds, [click(900)], evidence(rounds));
    expect(places.inVain).toEqual([]);
    for (const atS of [0, 6, 12]) expect(Math.abs(xAt(places, atS) - 900)).toBeLessThan(20);
    expect(places.isOther(drawnBody(squatter(400)(5)), 5)).toBe(true);
  });

  it('is in vain where nobody is, and leaves the choice as it was', () => {
    const places = lifterPlaces(rounds, [click(640)], evidence(rounds));
    expect(places.inVain).toEqual([click(640)]);
    expect(Math.abs(xAt(places, 6) - 400)).toBeLessThan(20);
  });

  it('holds until half-way to the next one', () => {
    const places = lifterPlaces(rounds, [click(900), { ...click(400), frame: 210, atS: 7 }], evidence(rounds));
    expect(xAt(places, 3.5)).toBeGreaterThan(800);
    expect(xAt(places, 4.5)).toBeLessThan(500);
  });
});
