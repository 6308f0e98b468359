import { appOrigin } from '../../contract/addresses.ts';

const own = new URL(appOrigin);

/** Whether an address belongs to the app itself, judged by a URL parser; false when it is missing, empty or broken. */
export function isOwnAddress(address: string | null | undefined): boolean {
  const url = parseAddress(address);
  if (url === null) return false;
  return url.protocol === own.protocol && url.host === own.host && url.username === '' && url.password === '';
}

/** Whether an address is one of the documents shown inside the page. */
export function isPreviewAddress(address: string | null | undefined): boolean {
  return isOwnAddress(address) && parseAddress(address)?.pathname.startsWith('/preview/') === true;
}

/** An address as a URL, or null when it is missing or broken. (`URL.parse` is missing in the fallback runtime's Node 20.) */
export function parseAddress(address: string | null | undefined): URL | null {
  if (typeof address !== 'string') return null;
  try {
    return new URL(address);
  } catch {
    return null;
  }
}
