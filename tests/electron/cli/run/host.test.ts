import { describe, expect, it } from 'vitest';
import { bar, baseFolder, makeProgress } from '../../../../electron/cli/run/host.ts';

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

type Stream = Parameters<typeof makeProgress>[0];

function streamOf(isTTY: boolean): { readonly stream: Stream; readonly written: string[] } {
  const written: string[] = [];
  const write = (text: string) => {
    written.push(text);
    return true;
  };
  return { stream: { isTTY, columns: 60, write }, written };
}

describe('progress', () => {
  it('is silent where nobody watches', () => {
    const { stream, written } = streamOf(false);
    const progress = makeProgress(stream);
    progress.show(0.5, 'Copying');
    progress.clear();
    expect(written).toEqual([]);
  });

  it('draws a bar on one line of a terminal and takes it away', () => {
    const { stream, written } = streamOf(true);
    const progress = makeProgress(stream);
    progress.show(0.5, 'Copying');
    progress.show(0.5, 'Copying');
    progress.clear();
    expect(written).toHaveLength(2);
    expect(written[0]).toContain('50 % Copying');
    expect(written.join('')).not.toContain('\n');
  });

  it('tells the time left from how long the work took so far, and starts over with the next', () => {
    const { stream, written } = streamOf(true);
    let nowMs = 5_000;
    const progress = makeProgress(stream, () => nowMs);
    progress.show(0, 'Squats');
    nowMs += 60_000;
    // A quarter took a minute: three more are left.
    progress.show(0.25, 'Squats');
    progress.clear();
    progress.show(0.25, 'Copying');
    expect(written[0]).not.toContain('left');
    expect(written[1]).toContain('25 % about 3 min left, Squats');
    expect(written[3]).toContain('25 % Copying');
  });

  it('fits into the terminal', () => {
    const { stream, written } = streamOf(true);
    makeProgress(stream).show(1, 'x'.repeat(200));
    expect((written[0] ?? '').replace('\r\u001b[2K', '').length).toBeLessThan(60);
  });

  it.each([
    [0, '  0 %'],
    [0.999, ' 99 %'],
    [1, '100 %'],
    [7, '100 %'],
  ])('%d is drawn as %s', (share, words) => {
    expect(bar(share)).toContain(words);
    expect(bar(share).length).toBe(bar(null).length);
  });
});
