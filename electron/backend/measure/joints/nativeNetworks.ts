import { createRequire } from 'node:module';
import type * as Runtime from 'onnxruntime-node';
import type { Network, NetworkName, Networks } from './networks.ts';

const packages = createRequire(import.meta.url);

/** Both networks as ONNX files' bytes, which threads share. */
export type NativeModels = Readonly<Record<NetworkName, SharedArrayBuffer>>;

/**
 * Loads the library that runs networks natively. The main thread of a process has to load it before any other does: a
 * second thread alone can't. Throws when it can't be loaded on this machine.
 */
export function loadNativeRuntime(): typeof Runtime {
  return packages('onnxruntime-node') as typeof Runtime;
}

/** The networks, run natively on the calling thread alone. Each is made ready at its first picture. */
export function openNativeNetworks(models: NativeModels): Networks {
  const runtime = loadNativeRuntime();
  return { one: nativeNetwork(runtime, models.one), several: nativeNetwork(runtime, models.several) };
}

function nativeNetwork({ InferenceSession, Tensor }: typeof Runtime, model: SharedArrayBuffer): Network {
  let session: Promise<Runtime.InferenceSession> | undefined;
  const open = () =>
    InferenceSession.create(Uint8Array.from(new Uint8Array(model)), {
      executionProviders: ['cpu'],
      executionMode: 'sequential',
      graphOptimizationLevel: 'all',
      intraOpNumThreads: 1,
      interOpNumThreads: 1,
      logSeverityLevel: 3,
    });
  return async (rgb, side) => {
    session ??= open();
    const { output } = await (await session).run({ picture: new Tensor('int32', rgb, [1, side, side, 3]) });
    if (!(output?.data instanceof Float32Array)) throw new Error('the network gives no numbers');
    return output.data;
  };
}
