#!/bin/sh
# A second opinion on waveform, polarity, bit order and rate from a general-purpose software modem (package minimodem of Debian, GPL,
# 0.24 in Debian 12): it reads the sound made here, and its own sound is read here, bit for bit, with white noise at Eb/N0 = 14 dB and more.
set -eu
cd "$(dirname "$0")/.."
command -v minimodem >/dev/null || {
  echo 'minimodem is not installed: apt-get install minimodem' >&2
  exit 1
}
mkdir -p out
npx --no-install esbuild scripts/check-modem.ts --bundle --platform=node --format=esm --outfile=out/check-modem.mjs --log-level=error
exec node out/check-modem.mjs
