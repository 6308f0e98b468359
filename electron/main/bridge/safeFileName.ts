/** Names that Windows keeps for devices, with or without an extension. */
const deviceName = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

/**
 * A file name that every file system takes: no separators, control characters or marks with a meaning; not empty, not
 * hidden, not a device, at most 100 characters.
 */
export function safeFileName(suggestion: string): string {
  const plain = suggestion
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken out
    .replace(/[\u0000-\u001f\u007f<>:"/\\|?*]+/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[.\s]+|[.\s]+$/g, '');
  const short = [...plain].slice(0, 100).join('').trimEnd();
  return short === '' || deviceName.test(short) ? 'Rackside' : short;
}
