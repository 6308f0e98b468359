import { workerData } from 'piscina';
import { takeIdleTimeOnly } from '../giveWay.ts';
import { openNetworks } from './networkRoute.ts';
import { type Look, perceive } from './perceive.ts';
import type { Looked, ThreadOrder } from './threadWork.ts';

const { route, courtesy }: ThreadOrder = workerData;
const networks = openNetworks(route);
const priority = courtesy === 'window' ? takeIdleTimeOnly() : undefined;

/** What a thread of the pool runs, one picture after another. */
export const look = async (order: Look): Promise<Looked> => {
  await priority;
  const before = process.threadCpuUsage();
  try {
    const seen = await perceive(await networks, order);
    const { user, system } = process.threadCpuUsage(before);
    return { seen, workedMs: (user + system) / 1000 };
  } finally {
    // Megabytes a picture: given back at once, they leave the garbage collector nothing to do.
    order.bytes.buffer.transfer(0);
  }
};
