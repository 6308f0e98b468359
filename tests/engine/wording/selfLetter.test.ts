import { expect, it } from 'vitest';
import { letter as german } from '../../../engine/wording/german/letter.ts';

it('speaks in the first person in a German letter to oneself', () => {
  const toAnother = /(?<!\p{L})(du|dich|dir|dein\p{L}*)(?!\p{L})/iu;
  expect(Object.values(german.self).filter((pattern) => toAnother.test(pattern))).toEqual([]);
});
