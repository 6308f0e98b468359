import { expect, test } from 'vitest';
import { backendHostFor } from '../../../../electron/main/backend/backendHost.ts';

// Versions of Node's native interface by release, from nodejs.org/api/n-api.html: 9 came with 20.3, 10 with 22.14.
test.each([
  ['9', 'fork'],
  ['10', 'utility'],
  ['11', 'utility'],
  [undefined, 'fork'],
])('with native interface %s the backend is started by %s', (version, host) => {
  expect(backendHostFor(version)).toBe(host);
});
