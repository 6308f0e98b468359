/** The database module needs this version of Node's native interface. */
const neededNodeApi = 10;

/** Which way to start the backend: inside the runtime where its Node is new enough, else on the Node that npm brought. */
export function backendHostFor(nodeApi: string | undefined): 'utility' | 'fork' {
  return Number(nodeApi ?? 0) >= neededNodeApi ? 'utility' : 'fork';
}
