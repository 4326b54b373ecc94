#!/usr/bin/env bash
# Validates GPX against the GPX 1.1 schema with xmllint (Debian: libxml2-utils).
# Without arguments it checks documents made here from awkward waypoints; `npm run build:js` must have run.
# With arguments it checks those files.
set -euo pipefail
cd "$(dirname "$0")/.."
schema=shared/position/gpx-1.1.xsd

if [ $# -eq 0 ]; then
  folder=$(mktemp -d)
  trap 'rm -rf "$folder"' EXIT
  node --input-type=module - "$folder" <<'SCRIPT'
import { writeFileSync } from 'node:fs';
import { toGpx } from './dist/position/index.js';

const folder = process.argv[2];
const awkward = ['', ' ', 'Merrow', '<&>"\'', ']]>', '\u0000\u0001\t\n\r\u007f\u0085', '\ud800', 'Å😀', '\ufffe', '<!--'];
const corners = [-180, -179.9999999, -6.502, -0.00000001, 0, 6.5, 179.9999999, 180].flatMap((longitude) =>
  [-90, -0.0000001, 56.338833, 90].map((latitude) => ({ latitude, longitude })),
);
const waypoints = corners.map((position, i) => {
  const text = awkward[i % awkward.length];
  return i % 2 ? { position, name: text } : { position, name: text, time: i * 86_399_999, description: text, source: text, type: text };
});
writeFileSync(`${folder}/none.gpx`, toGpx([], { creator: awkward[3] }));
writeFileSync(`${folder}/awkward.gpx`, toGpx(waypoints, { creator: awkward[5] }));
SCRIPT
  set -- "$folder"/*.gpx
fi

xmllint --noout --nonet --schema "$schema" "$@"
