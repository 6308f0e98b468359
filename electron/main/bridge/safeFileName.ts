import filenamify from 'filenamify';

/**
 * A file name that every file system takes: no separators, invisible characters or marks with a meaning; not empty, not
 * hidden, not a device of Windows, about 100 characters at most.
 */
export function safeFileName(suggestion: string): string {
  const name = filenamify(suggestion, { replacement: ' ' })
    .replace(/\s+/g, ' ')
    .replace(/^[.\s]+/, '');
  return name === '' || name === '!' ? 'Rackside' : name;
}
