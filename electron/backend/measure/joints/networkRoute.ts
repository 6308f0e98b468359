import { convertedModel } from './convertedModel.ts';
import { loadNativeRuntime, type NativeModels, openNativeNetworks } from './nativeNetworks.ts';
import { type Networks, sources } from './networks.ts';
import { openWasmNetworks } from './wasmNetworks.ts';

/** How the networks are run; plain data, which threads take over. */
export type NetworkRoute = { readonly kind: 'native'; readonly models: NativeModels } | { readonly kind: 'wasm' };

/** Says that the networks are to be run by WebAssembly even where the native library can be loaded. */
const choice = 'RACKSIDE_JOINTS';

/**
 * Chooses the native way of running the networks where it works, and readies them for it; else the way by WebAssembly, which
 * is slower and gives the same joints.
 *
 * @param onSlower is told why, when it is the slower way
 */
export async function chooseNetworkRoute(onSlower: (reason: unknown) => void): Promise<NetworkRoute> {
  try {
    if (process.env[choice] === 'wasm') throw new Error(`${choice} asks for WebAssembly`);
    loadNativeRuntime();
    return { kind: 'native', models: { one: await sharedModel('one'), several: await sharedModel('several') } };
  } catch (reason) {
    onSlower(reason);
    return { kind: 'wasm' };
  }
}

async function sharedModel(name: keyof NativeModels): Promise<SharedArrayBuffer> {
  const { model, side } = sources[name];
  const bytes = await convertedModel(model, side);
  const shared = new SharedArrayBuffer(bytes.length);
  new Uint8Array(shared).set(bytes);
  return shared;
}

/** Readies both networks on the calling thread. Nothing is fetched. */
export async function openNetworks(route: NetworkRoute): Promise<Networks> {
  return route.kind === 'native' ? openNativeNetworks(route.models) : openWasmNetworks();
}
