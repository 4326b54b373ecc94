import { formatIdentity, parseIdentity } from '../identity/index.ts';
import { failure, type Result, success } from '../result/index.ts';
import { quote, want } from '../result/internal.ts';
import {
  type ContentLine,
  escapeText,
  firstComponent,
  readContentLines,
  unescapeText,
  writeContentLine,
} from './content-line.ts';
import type { Directory, ExtraField, KnownStation, StationUpdate } from './known-station.ts';
import { createNoticeList, groupsOf, type NoticeList } from './list-reading.ts';
import { issue, type PlainCode } from './texts.ts';

/**
 * Write a directory as vCard 4.0 cards for address books (RFC 6350). What vCard has no property for goes into extended
 * ones: `X-MMSI`, `X-CALL-SIGN`, `X-MMSI-GROUP`, `X-EXTRA`. Origins and times of contact are not written.
 *
 * @param directory - what to write
 * @returns one card for each station, lines folded at 75 octets and ended by CR LF
 *
 * @see {@link readVcards}
 *
 * @example
 * ```ts
 * import { createDirectory, writeVcards } from 'seahail/directory';
 *
 * const directory = createDirectory({ mmsi: '002329990', origin: 'typed', name: 'Skerra Coastguard' });
 * console.log(writeVcards(directory).includes('FN:Skerra Coastguard')); // true
 * ```
 */
export function writeVcards(directory: Directory): string {
  want('writeVcards', 'a directory', directory, 'stations');
  return directory.stations.map(writeVcard).join('');
}

function writeVcard(station: KnownStation): string {
  const { mmsi, kind, name, callSign, notes, groups, extra = [] } = station;
  const lines: [string, string][] = [
    ['BEGIN', 'VCARD'],
    ['VERSION', '4.0'],
  ];
  if (kind === 'ship-group') lines.push(['KIND', 'group']);
  // FN is required, RFC 6350 §6.2.1.
  lines.push(['FN', escapeText(name ?? formatIdentity(mmsi))], ['X-MMSI', escapeText(mmsi)]);
  if (callSign !== undefined) lines.push(['X-CALL-SIGN', escapeText(callSign)]);
  for (const group of groups) lines.push(['X-MMSI-GROUP', escapeText(group)]);
  if (notes !== undefined) lines.push(['NOTE', escapeText(notes)]);
  for (const { label, text } of extra) lines.push(['X-EXTRA', `${escapeText(label)};${escapeText(text)}`]);
  lines.push(['END', 'VCARD']);
  return lines.map(([property, value]) => writeContentLine(property, value)).join('');
}

/**
 * Read stations from vCards. Properties without a place of their own become extra fields under their name; a card
 * without an identity gives a notice with its line, all others are read.
 *
 * @param text - cards as {@link writeVcards} makes them; other versions are read too, with a notice
 * @returns updates of origin `'imported'` for `remember`, in order of the cards; an issue where there is no card
 *
 * Source: RFC 6350.
 *
 * @see {@link remember}
 *
 * @example
 * ```ts
 * import { readVcards } from 'seahail/directory';
 *
 * const card = 'BEGIN:VCARD\r\nVERSION:4.0\r\nFN:Tern of Ardle\r\nX-MMSI:232999142\r\nEND:VCARD\r\n';
 * const cards = readVcards(card);
 * if (cards.ok) console.log(cards.value[0]?.name, cards.value[0]?.mmsi); // Tern of Ardle 232999142
 * ```
 */
export function readVcards(text: unknown): Result<readonly StationUpdate[]> {
  const lines = typeof text === 'string' ? readContentLines(text) : [];
  const notices = createNoticeList();
  const updates: StationUpdate[] = [];
  let card: Card | undefined;
  let found = false;
  const close = (): void => {
    const update = card === undefined ? undefined : updateOf(card, notices);
    if (update !== undefined) updates.push(update);
    card = undefined;
  };
  const lost = (line: ContentLine, code: PlainCode): void => {
    const at = [`line ${line.line}`];
    notices.push(issue(code, {}, { at, received: quote(line.value), clause: 'RFC 6350 §3.3' }));
  };
  for (const line of lines) {
    if (line.name === 'BEGIN' && /^vcard\s*$/i.test(line.value)) {
      if (card !== undefined) lost(line, 'directory-vcard-begin');
      close();
      card = [line];
      found = true;
    } else if (line.name === 'END') close();
    else if (line.name === '' || card === undefined) lost(line, 'directory-vcard-line');
    else card.push(line);
  }
  if (card !== undefined) lost(card[0], 'directory-vcard-end');
  close();
  if (!found && !(typeof text === 'string' && text.trim() === '')) {
    const received = typeof text === 'string' ? quote(text) : typeof text;
    return failure(issue('directory-vcard-none', {}, { received, clause: 'RFC 6350 §6.1.1' }));
  }
  return success(updates, notices.all());
}

/** Properties that say nothing about the station, or what its identity says anyway. */
const silent: ReadonlySet<string> = /* @__PURE__ */ new Set(['BEGIN', 'N', 'KIND', 'PRODID', 'REV']);

/** The lines of one card, its `BEGIN` first. */
type Card = [ContentLine, ...ContentLine[]];

function updateOf(card: Readonly<Card>, notices: NoticeList): StationUpdate | undefined {
  let mmsi: string | undefined;
  const groups: string[] = [];
  const texts: { name?: string; callSign?: string; notes?: string } = {};
  const extra: ExtraField[] = [];
  const tell = (line: ContentLine, code: PlainCode, clause: string): void => {
    const at = [`line ${line.line}`, line.name];
    notices.push(issue(code, {}, { at, received: quote(line.value), clause }));
  };
  const place = (line: ContentLine, field: 'name' | 'callSign' | 'notes'): void => {
    const text = unescapeText(line.value);
    if (texts[field] === undefined) texts[field] = text;
    else if (field === 'notes') texts.notes += `\n${text}`;
    else extra.push({ label: line.name + line.parameters, text });
  };
  for (const line of card) {
    const text = unescapeText(line.value);
    if (line.name === 'X-MMSI') {
      const parsed = parseIdentity(text);
      if (parsed.ok) mmsi ??= parsed.value.mmsi;
      else notices.push(...parsed.issues.map((issue) => ({ ...issue, at: [`line ${line.line}`, 'X-MMSI'] })));
    } else if (line.name === 'FN') place(line, 'name');
    else if (line.name === 'NOTE') place(line, 'notes');
    else if (line.name === 'X-CALL-SIGN') place(line, 'callSign');
    else if (line.name === 'X-MMSI-GROUP') {
      const told = groupsOf(text, () => tell(line, 'directory-group', 'ITU-R M.585-10'));
      for (const group of told) groups.push(group);
    } else if (line.name === 'X-EXTRA') {
      const [label, value] = firstComponent(line.value);
      extra.push({ label: unescapeText(label), text: unescapeText(value) });
    } else if (line.name === 'VERSION') {
      if (text.trim() !== '4.0') tell(line, 'directory-vcard-version', 'RFC 6350 §6.7.9');
    } else if (!silent.has(line.name)) extra.push({ label: line.name + line.parameters, text });
  }
  if (mmsi === undefined) {
    const [begin] = card;
    const told = card.some(({ name }) => name === 'X-MMSI');
    if (!told) tell(begin, 'directory-vcard-identity', 'RFC 6350 §6.10');
    return undefined;
  }
  if (texts.name === formatIdentity(mmsi)) delete texts.name;
  return { mmsi, origin: 'imported', ...texts, groups, ...(extra.length > 0 && { extra }) };
}
