import { expect, it, vi } from 'vitest';
import { oneReadAtATime } from '../../../renderer/state/oneReadAtATime.ts';

/** A read that is under way until it is told how it ends. */
function slowRead() {
  const ends: { readonly resolve: () => void; readonly reject: (error: Error) => void }[] = [];
  const read = vi.fn(() => new Promise<void>((resolve, reject) => ends.push({ resolve, reject })));
  return { read, end: () => ends.shift() };
}

it('reads once more after what was asked for meanwhile, however often', async () => {
  const { read, end } = slowRead();
  const refresh = oneReadAtATime(read);
  const all = Promise.all([refresh(), refresh(), refresh()]);
  expect(read).toHaveBeenCalledTimes(1);
  end()?.resolve();
  await vi.waitFor(() => expect(read).toHaveBeenCalledTimes(2));
  end()?.resolve();
  await all;
  expect(read).toHaveBeenCalledTimes(2);
});

it('reads again after a read that failed', async () => {
  const { read, end } = slowRead();
  const refresh = oneReadAtATime(read);
  const failed = refresh();
  end()?.reject(new Error('The backend is gone.'));
  await expect(failed).rejects.toThrow('The backend is gone.');
  const next = refresh();
  expect(read).toHaveBeenCalledTimes(2);
  end()?.resolve();
  await next;
});

it('reads again after a read that failed before it began', async () => {
  const read = vi.fn(() => Promise.resolve());
  read.mockImplementationOnce(() => {
    throw new Error('There is no bridge.');
  });
  const refresh = oneReadAtATime(read);
  await expect(refresh()).rejects.toThrow('There is no bridge.');
  await refresh();
  expect(read).toHaveBeenCalledTimes(2);
});

it('reads what was asked for during a read that failed', async () => {
  const { read, end } = slowRead();
  const refresh = oneReadAtATime(read);
  const failed = refresh();
  const next = refresh();
  end()?.reject(new Error('The backend is gone.'));
  await expect(failed).rejects.toThrow();
  await vi.waitFor(() => expect(read).toHaveBeenCalledTimes(2));
  end()?.resolve();
  await next;
});

it('loses nothing that is asked for in any of the moments after a read, and reads one at a time', async () => {
  for (let moments = 0; moments <= 8; moments += 1) {
    let stored = 0;
    let read = -1;
    let open = 0;
    const refresh = oneReadAtATime(async () => {
      open += 1;
      expect(open).toBe(1);
      const seen = stored;
      await Promise.resolve();
      read = seen;
      open -= 1;
    });
    const first = refresh();
    for (let moment = 0; moment < moments; moment += 1) await Promise.resolve();
    stored = 1;
    await Promise.all([refresh(), refresh(), first]);
    expect(read).toBe(1);
  }
});
