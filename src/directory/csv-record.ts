/** One record of a CSV text, or a line that is none. */
export interface CsvRecord {
  /** Line the record starts on, from 1. */
  readonly line: number;
  readonly fields: readonly string[];
  /** Set where quoting is broken: the line as it stood; the record is then `[]`. */
  readonly broken?: string;
}

/**
 * Take a text apart by RFC 4180, with line ends of any kind, and commas, semicolons or tabs as the first line has them.
 * A record with broken quoting costs its first line only: reading goes on at the next.
 */
export function* readRecords(text: string): Generator<CsvRecord> {
  const source = text.startsWith('\ufeff') ? text.slice(1) : text;
  const separator = separatorOf(source);
  const tried = new Uint8Array(source.length + 1);
  let line = 1;
  let start = 0;
  while (start < source.length) {
    const record = readRecord(source, start, separator, tried);
    const lineEnd = endOfLine(source, start);
    const next = record === undefined ? lineEnd : record.end;
    if (record === undefined) yield { line, fields: [], broken: source.slice(start, lineEnd) };
    else if (record.fields.some((field) => field.trim() !== '')) yield { line, fields: record.fields };
    const after = afterLineEnd(source, next);
    line += source.slice(start, after).match(/\r\n|\r|\n/g)?.length ?? 0;
    start = after;
  }
}

/** Write records by RFC 4180: comma, CRLF, quotes only where needed. */
export function writeRecords(records: readonly (readonly string[])[]): string {
  const quoted = (field: string): string =>
    /[",;\t\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
  return records.map((fields) => `${fields.map(quoted).join(',')}\r\n`).join('');
}

/** A cell that a spreadsheet would take for a formula, full-width signs among its first characters, marked as text by an apostrophe. */
export function guarded(text: string): string {
  return /^'*[=+\-@＝＋－＠\t\r\n]/.test(text) ? `'${text}` : text;
}

/** The text of a cell that {@link guarded} may have marked. */
export function unguarded(cell: string): string {
  return /^'+[=+\-@＝＋－＠\t\r\n]/.test(cell) ? cell.slice(1) : cell;
}

function separatorOf(source: string): string {
  const head = source.slice(0, endOfLine(source, 0)).replace(/"[^"]*"/g, '');
  const count = (separator: string): number => head.split(separator).length;
  return [',', ';', '\t'].reduce((best, each) => (count(each) > count(best) ? each : best));
}

/**
 * The record that starts here, or undefined where its quoting is broken. `tried` marks where fields started: what
 * follows one of a broken record breaks again, so that nothing is read twice and the time stays linear. One of a sound
 * record lies before all that is read after it.
 */
function readRecord(
  source: string,
  start: number,
  separator: string,
  tried: Uint8Array,
): { readonly fields: readonly string[]; readonly end: number } | undefined {
  const fields: string[] = [];
  let at = start;
  for (;;) {
    if (tried[at] === 1) return undefined;
    tried[at] = 1;
    if (source[at] === '"') {
      const end = closingQuote(source, at + 1);
      if (end === undefined) return undefined;
      fields.push(source.slice(at + 1, end).replaceAll('""', '"'));
      at = end + 1;
    } else {
      let end = at;
      while (end < source.length && source[end] !== separator && source[end] !== '\r' && source[end] !== '\n')
        end++;
      fields.push(source.slice(at, end));
      at = end;
    }
    if (at >= source.length || source[at] === '\r' || source[at] === '\n') return { fields, end: at };
    if (source[at] !== separator) return undefined;
    at++;
  }
}

function closingQuote(source: string, start: number): number | undefined {
  for (let at = source.indexOf('"', start); at >= 0; at = source.indexOf('"', at + 2)) {
    if (source[at + 1] !== '"') return at;
  }
  return undefined;
}

function endOfLine(source: string, start: number): number {
  let at = start;
  while (at < source.length && source[at] !== '\r' && source[at] !== '\n') at++;
  return at;
}

function afterLineEnd(source: string, at: number): number {
  return source.startsWith('\r\n', at) ? at + 2 : at + 1;
}
