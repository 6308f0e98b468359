import { closeSync, fstatSync, openSync, readSync, utimesSync, writeSync } from 'node:fs';

/** Turns one byte in the middle of a file over, as a fault of the disk or another program would; it is as long as before. */
export function changeOnDisk(file: string): void {
  const handle = openSync(file, 'r+');
  const at = Math.floor(fstatSync(handle).size / 2);
  const byte = new Uint8Array(1);
  readSync(handle, byte, 0, 1, at);
  writeSync(
    handle,
    byte.map((value) => value ^ 0xff),
    0,
    1,
    at,
  );
  closeSync(handle);
  touchOnDisk(file);
}

/** Gives a file another time and nothing else, as copying it would. */
export function touchOnDisk(file: string): void {
  utimesSync(file, new Date(), new Date(Date.now() + 5_000));
}
