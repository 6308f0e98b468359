import { describe, expect, it } from 'vitest';
import { baseFolder } from '../../../../electron/cli/run/host.ts';

describe('a relative name', () => {
  // npm sets INIT_CWD to where the person stood and runs scripts in the package's folder (npm's own documentation).
  it('starts where the person stood when npm runs the command', () => {
    expect(baseFolder({ npm_lifecycle_event: 'rackside', INIT_CWD: '/clips' }, '/app')).toBe('/clips');
    expect(baseFolder({ npm_lifecycle_event: 'demo', INIT_CWD: '/clips' }, '/app')).toBe('/clips');
  });

  it('starts in the working folder when something else does', () => {
    expect(baseFolder({ npm_lifecycle_event: 'test', INIT_CWD: '/clips' }, '/app')).toBe('/app');
    expect(baseFolder({}, '/app')).toBe('/app');
  });
});
