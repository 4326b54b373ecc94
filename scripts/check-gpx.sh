#!/usr/bin/env bash
# Validates GPX 1.1 waypoints against a schema of our own with xmllint (Debian: libxml2-utils).
# Without arguments it checks documents made here from awkward waypoints; `npm run build:js` must have run.
# With arguments it checks those files.
set -euo pipefail
cd "$(dirname "$0")/.."
schema=shared/position/gpx-waypoints.rng
valid() { xmllint --noout --nonet --relaxng "$schema" "$@"; }

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
  return i % 2 ? { position, name: text } : { position, name: text, time: i * 86_399_999, description: text, source: text, type: text, id: text, properties: { [text]: text, deep: null } };
});
writeFileSync(`${folder}/none.gpx`, toGpx([], { creator: awkward[3] }));
writeFileSync(`${folder}/awkward.gpx`, toGpx(waypoints, { creator: awkward[5] }));

// Each breaks one rule of GPX 1.1, and the schema must say so.
const right = toGpx([{ position: corners[9], name: 'Merrow', time: 0, type: 'boat', id: '232999871' }], { creator: 'check' });
const wrong = {
  order: right.replace(/( *<time>.*\n)( *<name>.*\n)/, '$2$1'),
  longitude: right.replace(/lon="[^"]*"/, 'lon="180.000000"'),
  latitude: right.replace(/lat="[^"]*"/, 'lat="90.000001"'),
  time: right.replace(/<time>.*</, '<time>1970-01-01<'),
  element: right.replace('</wpt>', '<course>90</course></wpt>'),
  extensions: right.replace(/(<extensions>)/, '$1<name>Merrow</name>'),
  twice: right.replace(/( *<name>.*\n)/, '$1$1'),
  version: right.replace('version="1.1"', 'version="1.0"'),
  namespace: right.replace('GPX/1/1', 'GPX/1/0'),
  creator: right.replace(/ creator="[^"]*"/, ''),
};
writeFileSync(`${folder}/right.gpx`, right);
for (const [name, text] of Object.entries(wrong)) {
  if (text === right) throw new Error(`${name}: nothing was broken`);
  writeFileSync(`${folder}/${name}.broken`, text);
}
SCRIPT
  for broken in "$folder"/*.broken; do
    if valid "$broken" 2>/dev/null; then
      echo "the schema accepts a document with a wrong $(basename "$broken" .broken)" >&2
      exit 1
    fi
  done
  set -- "$folder"/*.gpx
fi

valid "$@"
