#!/bin/sh
# Compares what src/network reads and writes with files of vectors made elsewhere (npm run check:network -- FILE ...), and with a general
# CAN library installed for the run (npm run check:network -- --second-opinion).
set -eu
cd "$(dirname "$0")/.."
mkdir -p out
npx --no-install esbuild scripts/check-network.ts --bundle --platform=node --format=esm --outfile=out/check-network.mjs --log-level=error
exec node out/check-network.mjs "$@"
