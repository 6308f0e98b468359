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
