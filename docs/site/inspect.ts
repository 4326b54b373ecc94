/** How wide a value may be written on one line. */
const WIDTH = 72;

/** A value as text, the way the shown output of the examples writes it. */
export function inspected(value: unknown, depth = 0): string {
  if (typeof value === 'string') return quoted(value);
  if (typeof value === 'bigint') return `${value}n`;
  if (typeof value === 'function') return `[Function: ${value.name || '(anonymous)'}]`;
  if (typeof value !== 'object' || value === null) return Object.is(value, -0) ? '-0' : String(value);
  if (value instanceof Error) return `${value.name}: ${value.message}`;
  if (depth > 2) return Array.isArray(value) ? '[Array]' : '[Object]';
  return Array.isArray(value) ? listed(value, depth) : laid(value, depth);
}

function listed(values: readonly unknown[], depth: number): string {
  return joined(
    values.map((value) => inspected(value, depth + 1)),
    '[',
    ']',
    depth,
  );
}

function laid(value: object, depth: number): string {
  const parts = Object.entries(value).map(([name, entry]) => {
    const key = /^[A-Za-z_$][\w$]*$/.test(name) ? name : quoted(name);
    return `${key}: ${inspected(entry, depth + 1)}`;
  });
  const maker = value.constructor?.name;
  return `${maker === 'Object' || maker === undefined ? '' : `${maker} `}${joined(parts, '{', '}', depth)}`;
}

function joined(parts: readonly string[], open: string, close: string, depth: number): string {
  if (parts.length === 0) return `${open}${close}`;
  const line = `${open} ${parts.join(', ')} ${close}`;
  if (line.length + depth <= WIDTH + 4 && !line.includes('\n')) return line;
  const indent = '  '.repeat(depth + 1);
  return `${open}\n${parts.map((part) => indent + part).join(',\n')}\n${indent.slice(2)}${close}`;
}

function quoted(text: string): string {
  const escaped = text.replaceAll('\\', '\\\\').replaceAll('\n', '\\n').replaceAll('\r', '\\r');
  return escaped.includes("'") && !escaped.includes('"')
    ? `"${escaped}"`
    : `'${escaped.replaceAll("'", "\\'")}'`;
}
