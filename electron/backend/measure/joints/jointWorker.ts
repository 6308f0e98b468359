import { parentPort } from 'node:worker_threads';
import type { Order, Report } from './messages.ts';
import { loadNetworks } from './networks.ts';
import { perceive } from './perceive.ts';

/** Entry of a worker thread that looks for the lifter's joints, one picture after another. */
const port = parentPort;
if (port === null) throw new Error('This file runs as a worker thread only.');
const report = (message: Report) => port.postMessage(message);
const fail = (error: unknown) =>
  report({ kind: 'failed', reason: error instanceof Error ? error.message : String(error) });

try {
  const networks = await loadNetworks();
  port.on('message', (order: Order) => {
    try {
      report({ kind: 'body', body: perceive(networks, order) });
    } catch (error) {
      fail(error);
    }
  });
  report({ kind: 'ready' });
} catch (error) {
  fail(error);
}
