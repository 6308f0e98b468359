import { damagedDatabases } from './damagedDatabases.ts';
import { fullDisk } from './fullDisk.ts';
import type { Proof } from './harness/proof.ts';
import { kills } from './kills.ts';
import { mutatedInputs } from './mutatedInputs.ts';
import { noPacket } from './noPacket.ts';
import { powerLoss } from './powerLoss.ts';

/** Every proof, in the order of the table; the longest first, so that it ends with the others. */
export const proofs: readonly Proof[] = [kills, mutatedInputs, powerLoss, fullDisk, damagedDatabases, noPacket];
