import { appOrigin } from '../../contract/addresses.ts';

const policy = (rules: readonly string[]): string => rules.join('; ');

/** What the page may load and run: its own files, and pictures it draws itself. */
export const pagePolicy = policy([
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob:",
  "media-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "frame-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
]);

/** What a previewed document may do: be looked at. No scripts, an origin of its own, pictures only inside itself. */
export const documentPolicy = policy([
  "default-src 'none'",
  "style-src 'unsafe-inline'",
  'img-src data:',
  'font-src data:',
  "base-uri 'none'",
  "form-action 'none'",
  `frame-ancestors ${appOrigin}`,
  'sandbox',
]);

/** Headers that every answer carries. */
export const commonHeaders = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-store',
} as const;
