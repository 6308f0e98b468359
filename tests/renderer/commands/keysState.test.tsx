// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import { keepInProfile } from '../../../renderer/base/profile.ts';

it('keeps the key of a command that has another id today', async () => {
  keepInProfile('rackside.keys', JSON.stringify({ markLongEnd: ['Shift+l'], markEnd: ['Shift+e'] }));
  const { keysState } = await import('../../../renderer/commands/keysState.ts');
  expect(keysState.getState().chosen).toEqual({ markStretchedEnd: ['Shift+l'], markEnd: ['Shift+e'] });
});
