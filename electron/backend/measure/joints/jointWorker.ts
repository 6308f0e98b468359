import { loadNetworks } from './networks.ts';
import { type Look, perceive } from './perceive.ts';

const networks = loadNetworks();

/** What a thread of the pool runs, one picture after another. */
export const look = async (order: Look) => perceive(await networks, order);
