import { workerData } from 'piscina';
import { type NetworkRoute, openNetworks } from './networkRoute.ts';
import { type Look, perceive, type Seen } from './perceive.ts';

const route: NetworkRoute = workerData;
const networks = openNetworks(route);

/** What a thread of the pool runs, one picture after another. */
export const look = async (order: Look): Promise<Seen> => {
  try {
    return await perceive(await networks, order);
  } finally {
    // Megabytes a picture: given back at once, they leave the garbage collector nothing to do.
    order.bytes.buffer.transfer(0);
  }
};
