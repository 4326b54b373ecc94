import { formatIdentity, parseIdentity } from '../identity/index.ts';
import { failure, type Notice, type Result, success } from '../result/index.ts';
import { quote, want } from '../result/internal.ts';
import { type CsvRecord, guarded, readRecords, unguarded, writeRecords } from './csv-record.ts';
import type { Directory, ExtraField, StationUpdate } from './known-station.ts';
import { createNoticeList, groupsOf, type NoticeList } from './list-reading.ts';
import { issue, type PlainCode } from './texts.ts';

/**
 * Write a directory as CSV for spreadsheets and other programs (RFC 4180, header in the first line, instants as
 * ISO 8601 UTC). Origins are not written: what is read back counts as imported.
 *
 * A text that a spreadsheet would take for a formula gets an apostrophe in front, which {@link readDirectoryCsv}
 * takes away again.
 *
 * @param directory - what to write
 * @param style - `'people'` writes identities in groups, which keeps a spreadsheet from eating their leading zeros
 * @returns the CSV text, each line ended by CR LF
 *
 * @see {@link writeVcards}
 *
 * @example
 * ```ts
 * import { createDirectory, writeDirectoryCsv } from 'seahail/directory';
 *
 * const directory = createDirectory({ mmsi: '002329990', origin: 'typed', name: 'Skerra Coastguard' });
 * console.log(writeDirectoryCsv(directory).split('\r\n')[1]); // 002329990,Skerra Coastguard,,,,,
 * ```
 */
export function writeDirectoryCsv(directory: Directory, style: 'people' | 'machine' = 'machine'): string {
  want('writeDirectoryCsv', 'a directory', directory, 'stations');
  const labels = [
    ...new Set(directory.stations.flatMap(({ extra = [] }) => extra.map(({ label }) => label))),
  ].sort();
  const rows = directory.stations.map((station) => [
    formatIdentity(station.mmsi, style),
    guarded(station.name ?? ''),
    guarded(station.callSign ?? ''),
    guarded(station.notes ?? ''),
    station.groups.map((group) => formatIdentity(group, style)).join('; '),
    instant(station.heardAt),
    instant(station.calledAt),
    ...labels.map((each) => guarded(station.extra?.find(({ label }) => label === each)?.text ?? '')),
  ]);
  const header = ['mmsi', 'name', 'call sign', 'notes', 'groups', 'heard', 'called', ...labels.map(guarded)];
  return writeRecords([header, ...rows]);
}

/**
 * Read stations from a CSV list: header in any order, quoted fields, comma, semicolon or tab. A row that cannot be used
 * gives a notice with its line, and where zeros were lost a `suggestion`; all other rows are read. An identity that
 * stood in a row before gives a notice too.
 *
 * Known headers, case, blanks and signs aside: `mmsi` with anything after it or `identity`; `name`, `vessel`, `ship`,
 * `boat` or `station`, each also with `name` after it; `call sign`; `notes`, `note` or `remarks`; `groups` or `group`;
 * `heard` or `last heard`; `called` or `last called`. The first of a kind counts; any other column becomes an extra field.
 *
 * @param text - the list, with a header line that names at least the identity
 * @returns updates of origin `'imported'` for `remember`, in order of the list; an issue where no column holds
 * identities
 *
 * Source: RFC 4180.
 *
 * @see {@link writeDirectoryCsv}
 * @see {@link remember}
 *
 * @example
 * ```ts
 * import { createDirectory, readDirectoryCsv } from 'seahail/directory';
 *
 * const list = readDirectoryCsv('Name,MMSI\nTern of Ardle,232 999 142\nSkerra Coastguard,2329990\n');
 * if (list.ok) {
 *   console.log(createDirectory(list.value).stations.length); // 1
 *   console.log(list.notices[0]?.at, list.notices[0]?.suggestion); // [ 'line 3', 'mmsi' ] 002329990
 * }
 * ```
 */
export function readDirectoryCsv(text: unknown): Result<readonly StationUpdate[]> {
  const rows = readRecords(typeof text === 'string' ? text : '');
  const header = rows.next().value as CsvRecord | undefined;
  const columns = columnsOf(header?.fields ?? []);
  if (!columns.some(({ field }) => field === 'mmsi')) {
    const received =
      typeof text === 'string' ? quote(header?.broken ?? header?.fields.join(',') ?? '') : typeof text;
    return failure(issue('directory-csv-header', {}, { at: ['line 1'], received, clause: rfc4180 }));
  }
  const notices = createNoticeList();
  const updates: StationUpdate[] = [];
  const lines = new Map<string, number>();
  for (const row of rows) {
    const update = updateOf(row, columns, notices);
    if (update === undefined) continue;
    const before = lines.get(update.mmsi);
    if (before !== undefined) notices.push(again(update.mmsi, row.line, before));
    lines.set(update.mmsi, row.line);
    updates.push(update);
  }
  return success(updates, notices.all());
}

const rfc4180 = 'RFC 4180 §2';

function again(mmsi: string, line: number, before: number): Notice {
  return issue(
    'directory-csv-twice',
    { line: before },
    { at: [`line ${line}`, 'mmsi'], received: quote(mmsi), clause: 'ITU-R M.585-10' },
  );
}

type Field = 'mmsi' | 'name' | 'callSign' | 'notes' | 'groups' | 'heardAt' | 'calledAt';

interface Column {
  readonly label: string;
  readonly field?: Field;
}

/** What header cells may say, blanks, case and signs aside; "MMSI number" and its like, where no cell says it shorter. */
const headers: Readonly<Record<Field, string>> = {
  mmsi: 'mmsi identity',
  name: 'name vesselname shipname boatname stationname vessel ship boat station',
  callSign: 'callsign',
  notes: 'notes note remarks',
  groups: 'groups group',
  heardAt: 'heard lastheard',
  calledAt: 'called lastcalled',
};
const names: ReadonlyMap<string, Field> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.keys(headers) as Field[]).flatMap((field) =>
    headers[field].split(' ').map((cell): [string, Field] => [cell, field]),
  ),
);

function columnsOf(header: readonly string[]): readonly Column[] {
  const taken = new Set<string>();
  const bares = header.map((cell) => unguarded(cell).trim());
  const keys = bares.map((bare) => bare.toLowerCase().replace(/[^a-z]/g, ''));
  const isNamed = keys.some((key) => names.get(key) === 'mmsi');
  return bares.map((bare, place): Column => {
    const key = keys[place] ?? '';
    const field = names.get(key) ?? (!isNamed && key.startsWith('mmsi') ? 'mmsi' : undefined);
    if (field !== undefined && !taken.has(field)) {
      taken.add(field);
      return { label: bare, field };
    }
    const label = bare === '' || taken.has(`extra ${bare}`) ? `${bare} column ${place + 1}`.trim() : bare;
    taken.add(`extra ${label}`);
    return { label };
  });
}

function updateOf(
  row: CsvRecord,
  columns: readonly Column[],
  notices: NoticeList,
): StationUpdate | undefined {
  const where = `line ${row.line}`;
  const notice = (code: PlainCode, field: string, received: string, clause: string): void => {
    notices.push(issue(code, {}, { at: [where, field], received: quote(received), clause }));
  };
  if (row.broken !== undefined) {
    notice('directory-csv-quotes', 'quotes', row.broken, rfc4180);
    return undefined;
  }
  let mmsi: string | undefined;
  let groups: readonly string[] = [];
  const texts: { name?: string; callSign?: string; notes?: string } = {};
  const times: { heardAt?: number; calledAt?: number } = {};
  const extra: ExtraField[] = [];
  for (const [place, cell] of row.fields.entries()) {
    const { label, field } = columns[place] ?? { label: `column ${place + 1}` };
    const text = unguarded(cell);
    if (field !== 'mmsi' && text.trim() === '') continue;
    if (field === 'mmsi') {
      const parsed = parseIdentity(cell);
      if (parsed.ok) mmsi = parsed.value.mmsi;
      else notices.push(...parsed.issues.map((issue) => ({ ...issue, at: [where, field] })));
    } else if (field === 'groups') {
      groups = groupsOf(text, (group) => notice('directory-group', field, group, 'ITU-R M.585-10'));
    } else if (field === 'heardAt' || field === 'calledAt') {
      const at = instantOf(text);
      if (at === undefined) notice('directory-csv-time', field, text, 'ISO 8601');
      else times[field] = at;
    } else if (field !== undefined) texts[field] = text;
    else extra.push({ label, text });
  }
  if (mmsi === undefined) {
    if (row.fields.length <= columns.findIndex(({ field }) => field === 'mmsi')) {
      notice('directory-csv-short', 'mmsi', row.fields.join(','), rfc4180);
    }
    return undefined;
  }
  return { mmsi, origin: 'imported', ...texts, groups, ...times, ...(extra.length > 0 && { extra }) };
}

function instant(time: number | undefined): string {
  return time === undefined ? '' : new Date(time).toISOString();
}

/** Only with a zone: other forms mean different instants in different places. */
const isoInstant = /^(?:[+-]\d\d)?\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d{1,9})?)?(?:Z|[+-]\d\d:\d\d)$/;

function instantOf(text: string): number | undefined {
  const trimmed = text.trim();
  const [date = ''] = trimmed.split('T');
  const time = isoInstant.test(trimmed) ? Date.parse(trimmed) : Number.NaN;
  // Engines may read 30 February as 2 March.
  const isDay = new Date(`${date}T00:00Z`).getUTCDate() === Number(date.slice(-2));
  return Number.isNaN(time) || !isDay ? undefined : time;
}
