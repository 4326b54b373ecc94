// Files that are handed on say what they should and nothing else: no cell of a CSV is a formula, no text ends its card,
// element, line or sentence (docs/guide/identity.md, docs/recipe/map-marker.md, docs/recipe/plotter.md).
//
// Sources: RFC 4180 (CSV), RFC 6350 (vCard), XML 1.0 section 2.2 (characters), RFC 7946 (GeoJSON), IEC 61162-1 as
// restated (characters of a sentence). Which first characters make a cell a formula: common practice, no source.
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import { decodeFields, describeCall } from '../../../src/call/index.ts';
import {
  createDirectory,
  type Directory,
  readDirectoryCsv,
  readVcards,
  writeDirectoryCsv,
  writeVcards,
} from '../../../src/directory/index.ts';
import { toGeoJson, toGeoUri, toGpx } from '../../../src/position/index.ts';
import { plotBearings } from '../../../src/position/plot/index.ts';
import { readSentences, writeWaypoint } from '../../../src/sentence/index.ts';
import { writeLogCsv, writeLogJson } from '../../../src/station/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { pick } from '../support/calls.ts';
import { hostile } from '../support/hostile.ts';

/** Rounds of `npm run attack`. */
export const usual = 20_000;

/** Records and cells of a CSV, by RFC 4180; `null` where quotes are out of order. */
export function cellsOf(text: string): string[][] | null {
  const records: string[][] = [];
  let record: string[] = [];
  let at = 0;
  while (at <= text.length) {
    let cell = '';
    if (text[at] === '"') {
      for (at += 1; ; at += 1) {
        if (at >= text.length) return null;
        if (text[at] === '"') {
          if (text[at + 1] !== '"') break;
          at += 1;
        }
        cell += text[at];
      }
      at += 1;
    } else {
      while (at < text.length && text[at] !== ',' && text[at] !== '\r' && text[at] !== '\n') {
        if (text[at] === '"') return null;
        cell += text[at];
        at += 1;
      }
    }
    record.push(cell);
    if (text[at] === ',') at += 1;
    else if (at >= text.length || text[at] === '\r' || text[at] === '\n') {
      records.push(record);
      record = [];
      at += text[at] === '\r' && text[at + 1] === '\n' ? 2 : 1;
      if (at >= text.length) return records;
    } else return null;
  }
  return records;
}

const formula = /^[=+\-@\uff1d\uff0b\uff0d\uff20\t\r]/;
/** A cell that is nothing but a number is no formula. */
const plainNumber = /^[+-]?\d+(?:\.\d+)?$/;

const outsideXml = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u;

/** What is not well formed in an XML document of simple elements, or `null`. */
function xmlFault(text: string): string | null {
  if (outsideXml.test(text)) return 'a character that XML does not have';
  const open: string[] = [];
  const tag = /<(?:\?[^>]*\?|(\/?)([A-Za-z][\w:.-]*)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?))>/gy;
  let at = 0;
  while (at < text.length) {
    if (text[at] === '<') {
      tag.lastIndex = at;
      const match = tag.exec(text);
      if (match === null) return `no tag at ${text.slice(at, at + 40)}`;
      const [whole, closing, name, attributes, single] = match;
      if (/&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[0-9a-fA-F]+);)/.test(attributes ?? ''))
        return 'a bare & in an attribute';
      if (name !== undefined && closing === '/') {
        if (open.pop() !== name) return `</${name}> closes another`;
      } else if (name !== undefined && single !== '/') open.push(name);
      at += whole.length;
    } else {
      const end = text.indexOf('<', at);
      const inside = text.slice(at, end < 0 ? undefined : end);
      if (/&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[0-9a-fA-F]+);)/.test(inside)) return 'a bare &';
      at += inside.length;
    }
  }
  return open.length === 0 ? null : `${open.at(-1)} is never closed`;
}

/** A directory as a program may have it: remembered, or put together by another hand. */
function directoryOf(random: Random): Directory {
  const mmsis = ['232999142', '023299905', '002329990'];
  if (random.below(2) === 0) {
    return createDirectory(
      mmsis.map((mmsi) => ({
        mmsi,
        origin: pick(random, ['typed', 'ais', 'imported'] as const),
        name: hostile(random),
        callSign: hostile(random),
        notes: hostile(random),
        extra: [{ label: hostile(random), text: hostile(random) }],
      })),
    );
  }
  const text = (): string => (random.below(2) === 0 ? hostile(random) : '232999142');
  return {
    kind: 'directory',
    stations: mmsis.map((mmsi) => ({
      mmsi: (random.below(3) === 0 ? hostile(random) : mmsi) as never,
      kind: 'ship',
      name: hostile(random),
      callSign: hostile(random),
      notes: hostile(random),
      groups: [text() as never],
      origins: { entry: 'imported', name: 'imported' },
      extra: [{ label: hostile(random), text: hostile(random) }],
    })),
  } as Directory;
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  /** A writer may refuse what no type allows; then there is no file. */
  const written = (name: string, how: string, write: () => string): string | null => {
    try {
      const text = write();
      notes.count(name);
      return text;
    } catch (error) {
      notes.count(`${name}: refused`);
      if (!(error instanceof RangeError || error instanceof TypeError))
        notes.broken(`${name} fails`, `${how}: ${String(error)}`);
      return null;
    }
  };
  const checkCsv = (name: string, text: string, rows: number, how: string): void => {
    const records = cellsOf(text.replace(/^\ufeff/, ''));
    if (records === null) {
      notes.broken(`${name}: quotes out of order`, `${how}: ${show(text)}`);
      return;
    }
    if (records.length !== rows + 1)
      notes.broken(`${name}: ${records.length} records for ${rows}`, `${how}: ${show(text)}`);
    for (const record of records) {
      if (record.length !== records[0]?.length)
        notes.broken(`${name}: a record of another length`, `${how}: ${show(text)}`);
      const bad = record.find((cell) => formula.test(cell) && !plainNumber.test(cell));
      if (bad !== undefined) notes.broken(`${name}: a formula`, `${how}: ${show(bad)}`);
    }
  };
  const checkXml = (name: string, text: string | null, how: string): void => {
    const fault = text === null ? null : xmlFault(text);
    if (fault !== null) notes.broken(`${name} is not well formed`, `${how}: ${fault}`);
  };

  for (let tried = 0; tried < count; tried += 1) {
    const random = randomFrom(seed * 1_000_003 + tried);
    const how = `seed ${seed}, try ${tried}`;
    const known = directoryOf(random);
    const about = `${how}: ${show(known.stations)}`;
    const csv = written('directory CSV', about, () => writeDirectoryCsv(known));
    if (csv !== null) {
      checkCsv('directory CSV', csv, known.stations.length, about);
      readDirectoryCsv(csv);
    }
    const cards = written('vCards', about, () => writeVcards(known));
    if (cards !== null) {
      const lines = cards.split('\r\n');
      const begins = lines.filter((line) => /^BEGIN:VCARD$/i.test(line)).length;
      const ends = lines.filter((line) => /^END:VCARD$/i.test(line)).length;
      if (begins !== known.stations.length || ends !== begins)
        notes.broken('vCards: another number of cards', `${about}: ${show(cards)}`);
      if (lines.some((line) => /[\r\n]/.test(line))) notes.broken('vCards: a bare line break', about);
      if (lines.some((line) => line !== '' && !/^[ \t]|^[A-Za-z0-9.-]+[;:]/.test(line)))
        notes.broken('vCards: a line that is no property', `${about}: ${show(cards)}`);
      readVcards(cards);
    }

    const marks = [
      {
        position: { latitude: 56 + random.even(), longitude: -180 + 360 * random.even() },
        name: hostile(random),
        description: hostile(random),
        source: hostile(random),
        type: hostile(random),
      },
    ];
    const creator = hostile(random);
    const gpx = written('GPX', how, () => toGpx(marks, { creator }));
    checkXml('GPX', gpx, `${how}: ${show({ marks, creator })}`);
    if (gpx !== null && gpx.split('<wpt ').length !== 2)
      notes.broken('GPX: another number of waypoints', show(marks));
    const geoJson = toGeoJson(marks);
    const [longitude, latitude] = geoJson.features[0]?.geometry.coordinates ?? [999, 999];
    if (
      !(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) ||
      /-0(?![.\d])/.test(JSON.stringify(geoJson))
    )
      notes.broken('GeoJSON: no place', show(geoJson));
    if (!/^geo:-?\d+(\.\d+)?,-?\d+(\.\d+)?$/.test(toGeoUri(marks[0]?.position as never)))
      notes.broken('geo URI', show(marks));
    checkXml(
      'plot',
      written('plot', how, () =>
        plotBearings({ latitude: 56, longitude: -6 }, [{ name: hostile(random), bounds: null }], {
          title: hostile(random),
          ownName: hostile(random),
        }),
      ),
      how,
    );

    const name = hostile(random);
    const waypoint = written('waypoint', how, () =>
      writeWaypoint({ position: { latitude: 56, longitude: -6 }, name }),
    );
    if (waypoint !== null) {
      if (!/^\$[\x20-\x7e]+\*[0-9A-F]{2}$/.test(waypoint) || /[$!\\*]/.test(waypoint.slice(1, -3)))
        notes.broken('a sentence with reserved characters', show({ name, waypoint }));
      const [reading] = readSentences(`${waypoint}\r\n`);
      if (reading?.kind !== 'waypoint') notes.broken('a waypoint is not read back', show({ name, waypoint }));
    }

    const text = hostile(random);
    const entry = {
      kind: 'log-entry',
      number: 1,
      at: 0,
      what: 'note',
      text,
      dialogue: null,
      position: null,
    } as const;
    const call = { ...decodeFields({} as never).call, from: hostile(random) };
    const log = written('log CSV', how, () =>
      writeLogCsv([entry, { ...entry, number: 2, call: call as never }]),
    );
    if (log !== null) checkCsv('log CSV', log, 2, `${how}: ${show(text)}, ${show(call)}`);
    written('log JSON', how, () => writeLogJson([entry]));

    // The name that a stranger's expansion carries.
    const stranger = `$CDDSE,1,1,A,2329991420,04,${text.replace(/[^\x20-\x7e]/g, (one) => `^${(one.charCodeAt(0) & 0xff).toString(16).padStart(2, '0').toUpperCase()}`).replace(/[$!\\*,]/g, '')}`;
    const sum = [...stranger.slice(1)].reduce((left, one) => left ^ one.charCodeAt(0), 0);
    const pair = `$CDDSC,20,2329991420,08,21,26,1561800632,1350,,,B,E*73\r\n${stranger}*${sum.toString(16).toUpperCase().padStart(2, '0')}\r\n`;
    for (const reading of readSentences(pair, { own: '232999871' })) {
      if (reading.kind !== 'call') continue;
      const { sentence, rows } = describeCall(reading.call);
      // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
      const control = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202e]/;
      const shown = [sentence, ...rows.map(({ value }) => value)].find((one) => control.test(one));
      if (shown !== undefined)
        notes.broken('a control character of a stranger is described', show({ pair, shown }));
    }
  }
  return notes.outcome();
};
