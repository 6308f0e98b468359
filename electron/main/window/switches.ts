import type { CommandLine } from 'electron';

/** Switches that keep the runtime itself off every network. */
export const offlineSwitches: readonly (readonly [name: string, value?: string])[] = [
  ['disable-background-networking'],
  ['disable-component-update'],
  ['disable-domain-reliability'],
  ['disable-sync'],
  ['disable-default-apps'],
  ['disable-breakpad'],
  ['no-pings'],
  ['dns-prefetch-disable'],
  ['no-proxy-server'],
  // Whatever still asks for a host finds none.
  ['host-resolver-rules', 'MAP * ~NOTFOUND'],
  ['force-webrtc-ip-handling-policy', 'disable_non_proxied_udp'],
  [
    'disable-features',
    'AutofillServerCommunication,CertificateTransparencyComponentUpdater,MediaRouter,NetworkTimeServiceQuerying,OptimizationHints,Translate,WebRtcHideLocalIpsWithMdns',
  ],
];

/** Sets the switches; must run before the app is ready. */
export function goOffline(commandLine: CommandLine): void {
  for (const [name, value] of offlineSwitches) commandLine.appendSwitch(name, value);
}
