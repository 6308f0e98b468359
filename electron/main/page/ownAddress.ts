import { appOrigin } from '../../contract/addresses.ts';
import { parseAddress } from './parseAddress.ts';

const own = new URL(appOrigin);

/** Whether an address is of the app itself, judged by a URL parser; false for none, an empty or a broken one. */
export function isOwnAddress(address: string | null | undefined): boolean {
  const url = parseAddress(address);
  if (url === null) return false;
  return url.protocol === own.protocol && url.host === own.host && url.username === '' && url.password === '';
}

/** Whether an address is one of the documents shown inside the page. */
export function isPreviewAddress(address: string | null | undefined): boolean {
  return isOwnAddress(address) && parseAddress(address)?.pathname.startsWith('/preview/') === true;
}
