import { createSocket } from 'node:dgram';
import { once } from 'node:events';
import { createServer } from 'node:net';

/** Somebody on this machine who waits for packets and for connections, at one number of both kinds. */
export type Listener = {
  readonly address: string;
  /** `udp` or `tcp`, one each packet or connection that arrived. */
  readonly heard: readonly string[];
  readonly close: () => Promise<void>;
};

/** Listens on the local interface, by UDP and TCP. */
export async function listen(): Promise<Listener> {
  const heard: string[] = [];
  const connections = createServer((socket) => {
    heard.push('tcp');
    socket.destroy();
  });
  connections.listen(0, '127.0.0.1');
  await once(connections, 'listening');
  const bound = connections.address();
  const port = typeof bound === 'object' && bound !== null ? bound.port : 0;
  const packets = createSocket('udp4', () => heard.push('udp'));
  packets.bind(port, '127.0.0.1');
  await once(packets, 'listening');
  return {
    address: `127.0.0.1:${port}`,
    heard,
    close: async () => {
      packets.close();
      connections.close();
      await once(connections, 'close');
    },
  };
}
