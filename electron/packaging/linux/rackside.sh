#!/bin/sh
# Rackside: without arguments the window, with arguments a command ("rackside --help").
set -eu
home=$(dirname "$(readlink -f "$0")")
backend="$home/resources/backend"
# The browser's sandbox can't start for root, and is never switched off for anybody else.
sandbox=''
if [ "$(id -u)" = 0 ]; then sandbox='--no-sandbox'; fi
if [ "$#" -eq 0 ]; then exec "$home/rackside-desk" $sandbox; fi
if [ -x "$backend/node" ]; then exec "$backend/node" "$backend/dist/cli.mjs" "$@"; fi
RACKSIDE_COMMAND=1 exec "$home/rackside-desk" $sandbox --ozone-platform=headless --disable-gpu --log-level=3 -- "$@"
