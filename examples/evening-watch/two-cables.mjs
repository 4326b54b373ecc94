// The calls of one cable beside those of the other.

/**
 * Pairs calls of the same kind from the same station, in order. Each row has the call of the serial cable, of the
 * network or both, and the fields that only one of them knows or in which they differ.
 */
export function pairCalls(serial, network) {
  const left = [...serial];
  const rows = network.map((call) => {
    const place = left.findIndex(({ kind, from }) => kind === call.kind && from === call.from);
    return { serial: place < 0 ? null : left.splice(place, 1)[0], network: call };
  });
  rows.push(...left.map((call) => ({ serial: call, network: null })));
  return rows.map((row) => ({ ...row, differ: differingFields(row) }));
}

function differingFields({ serial, network }) {
  if (serial === null || network === null) return [];
  const names = new Set([...Object.keys(serial), ...Object.keys(network)]);
  return [...names].filter((name) => JSON.stringify(serial[name]) !== JSON.stringify(network[name]));
}
