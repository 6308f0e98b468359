import type { CommandLine } from 'electron';
import { expect, test } from 'vitest';
import { goOffline } from '../../../../electron/main/window/switches.ts';

test('the runtime is told to keep off the network on its own account', () => {
  const set = new Map<string, string | undefined>();
  goOffline({ appendSwitch: (name: string, value?: string) => void set.set(name, value) } as unknown as CommandLine);
  for (const name of [
    'disable-background-networking',
    'disable-component-update',
    'disable-domain-reliability',
    'no-pings',
  ]) {
    expect(set.has(name)).toBe(true);
  }
  expect(set.get('host-resolver-rules')).toBe('MAP * ~NOTFOUND');
});

test('no switch weakens the sandbox or the origin rules', () => {
  const names: string[] = [];
  goOffline({ appendSwitch: (name: string) => void names.push(name) } as unknown as CommandLine);
  for (const name of ['no-sandbox', 'disable-web-security', 'disable-site-isolation-trials', 'remote-debugging-port']) {
    expect(names).not.toContain(name);
  }
});
