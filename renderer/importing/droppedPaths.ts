import { rackside } from '../bridge/rackside.ts';

/** Whether what is dragged holds files. */
export const holdsFiles = (transfer: DataTransfer): boolean => transfer.types.includes('Files');

/** Where the dropped files and folders lie; what has no path (a picture dragged out of a page) is left out. */
export const droppedPaths = (transfer: DataTransfer): readonly string[] =>
  [...transfer.files].map((file) => rackside().pathOfFile(file)).filter((path) => path !== '');
