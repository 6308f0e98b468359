import { expect, test, vi } from 'vitest';
import { filesNamedIn, keepNamedFiles } from '../../../../electron/main/window/namedFiles.ts';

test('reviews and handovers among the arguments are found, from where the start was made', () => {
  const args = ['/usr/lib/rackside/rackside-desk', '--no-zygote', 'squat.rackside-review', '../Ada.ZIP', '/a/b.json'];
  expect(filesNamedIn(args, '/home/ada/in')).toEqual([
    '/home/ada/in/squat.rackside-review',
    '/home/ada/Ada.ZIP',
    '/a/b.json',
  ]);
});

test('neither the program, nor its switches, nor clips, nor a folder count', () => {
  const args = ['/opt/rackside.zip', '--file=/tmp/x.json', '-x.zip', 'clip.mp4', '/home/ada/checkout'];
  expect(filesNamedIn(args, '/')).toEqual([]);
});

test('named files wait in order until each is taken once', () => {
  const tell = vi.fn();
  const named = keepNamedFiles(tell);
  expect(named.take()).toBeNull();
  named.add([]);
  expect(tell).not.toHaveBeenCalled();
  named.add(['/a.json', '/b.zip']);
  expect(tell).toHaveBeenCalledOnce();
  expect([named.take(), named.take(), named.take()]).toEqual(['/a.json', '/b.zip', null]);
});
