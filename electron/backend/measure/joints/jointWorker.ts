import { workerData } from 'piscina';
import { type NetworkRoute, openNetworks } from './networkRoute.ts';
import { type Look, perceive } from './perceive.ts';

const route: NetworkRoute = workerData;
const networks = openNetworks(route);

/** What a thread of the pool runs, one picture after another. */
export const look = async (order: Look) => perceive(await networks, order);
