import { open, readdir } from 'node:fs/promises';
import path from 'node:path';

/** Waits until what a file holds is on the disk, so that a power cut can't take it back. */
export async function flushFile(file: string): Promise<void> {
  // Windows flushes only what is open for writing.
  const handle = await open(file, 'r+');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Waits until the names in a folder are on the disk. */
export async function flushFolder(folder: string): Promise<void> {
  // Windows can't open folders; it has no need to.
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Waits until a folder is on the disk with all that lies in it. */
export async function flushTree(folder: string): Promise<void> {
  for (const entry of await readdir(folder, { withFileTypes: true })) {
    const each = path.join(folder, entry.name);
    if (entry.isDirectory()) await flushTree(each);
    else if (entry.isFile()) await flushFile(each);
  }
  await flushFolder(folder);
}
