/** The lifter's joints: MoveNet in worker threads, on pictures as they are decoded. */
export type { JointReader, JointReaderOptions } from './jointReader.ts';
export { everyFramesFor, jointMethod, openJointReader } from './jointReader.ts';
