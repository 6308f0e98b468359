import { expect, it } from 'vitest';
import { sayFollowed, sayFollowedToCoach } from '../../../engine/wording/sayFollowed.ts';

const followed = { follows: 'shoulders', followsBecause: 'discStandsStill' } as const;

it('says what is followed and why, to the trainee in both languages', () => {
  expect(sayFollowed(followed, 'en')).toBe(
    'What is followed: the shoulders, because the disc that was found stands still while you move.',
  );
  expect(sayFollowed(followed, 'de')).toBe(
    'Verfolgt: die Schultern, denn die gefundene Scheibe steht still, während du dich bewegst.',
  );
});

it('tells the coach what to do about it', () => {
  expect(sayFollowedToCoach(followed, 'en')).toBe(
    'What is followed: the shoulders, because the disc that was found stands still during the lift; click the right one, if it shows.',
  );
  expect(sayFollowedToCoach(followed, 'de')).toBe(
    'Verfolgt: die Schultern, denn die gefundene Scheibe steht beim Heben still; klick die richtige an, falls sie zu sehen ist.',
  );
});
