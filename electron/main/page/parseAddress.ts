/** An address as a URL, or null for none or a broken one. (`URL.parse` is missing in the fallback runtime's Node 20.) */
export function parseAddress(address: string | null | undefined): URL | null {
  if (typeof address !== 'string') return null;
  try {
    return new URL(address);
  } catch {
    return null;
  }
}
