// A call that a wire brings in two sentences is one call: from the reader to the station it is one event, a provisional
// reading is finished by a final one, an alert is handed over at once, and a lost expansion loses nothing
// (docs/guide/sentence.md, docs/guide/station.md, `Readings.call`).
import { isDeepStrictEqual } from 'node:util';
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import { composePositionRequest } from '../../../src/call/index.ts';
import { createSentenceReader } from '../../../src/sentence/index.ts';
import { createStation, type Effect, step } from '../../../src/station/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { digits, pick, shipOf } from '../support/calls.ts';

/** Streams of `npm run attack`. */
export const usual = 20_000;

const own = '232999871';

/** A sentence with its check, the exclusive-or of the characters between `$` and `*` (IEC 61162-1). */
function sentence(body: string): string {
  const sum = [...body].reduce((left, one) => left ^ one.charCodeAt(0), 0);
  return `$${body}*${sum.toString(16).toUpperCase().padStart(2, '0')}\r\n`;
}

const two = (random: Random, below: number): string => String(random.below(below)).padStart(2, '0');
const placeOf = (random: Random): string =>
  `${random.below(4)}${two(random, 90)}${two(random, 60)}${String(random.below(180)).padStart(3, '0')}${two(random, 60)}`;

interface Piece {
  readonly text: string;
  /** Milliseconds after the piece before. */
  readonly later: number;
}

/** Cut anywhere, each piece a little later than the one before. */
function cutUp(random: Random, text: string, pause: number): Piece[] {
  const pieces: Piece[] = [];
  for (let from = 0; from < text.length; ) {
    const length = 1 + random.below(random.below(2) === 0 ? 12 : 90);
    pieces.push({ text: text.slice(from, from + length), later: from === 0 ? pause : random.below(30) });
    from += length;
  }
  return pieces;
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  for (let tried = 0; tried < count; tried += 1) {
    const random = randomFrom(seed * 1_000_003 + tried);
    const from = shipOf(random);
    const kind = pick(random, ['distress-alert', 'position-reply'] as const);
    const place = placeOf(random);
    const time = `${two(random, 24)}${two(random, 60)}`;
    const finer = digits(random, 8);
    // Distress: nature, telephony. Reply: safety, position. The last field announces the expansion (IEC 61162-1).
    const call =
      kind === 'distress-alert'
        ? sentence(`CDDSC,12,${from}0,12,${two(random, 9)},00,${place},${time},,,S,E`)
        : sentence(`CDDSC,20,${from}0,08,21,26,${place},${time},,,B,E`);
    const expansion = sentence(`CDDSE,1,1,A,${from}0,00,${finer}`);
    const between = Array.from({ length: random.below(4) }, () =>
      sentence(pick(random, ['HEHDT,134.2,T', 'IIVHW,,T,,M,5.1,N,,K', 'SDDPT,12.4,0.5,'])),
    ).join('');
    const fate = pick(random, ['at once', 'soon', 'lost', 'late'] as const);
    const pause = { 'at once': 0, soon: random.below(1500), lost: 0, late: 4000 + random.below(4000) }[fate];
    const first = cutUp(random, between + call + between, 5);
    const rest = fate === 'lost' ? [] : cutUp(random, expansion, pause);
    const how = show({ seed, tried, kind, fate, call, expansion });
    notes.count(`${kind}, expansion ${fate}`);

    let at = Date.UTC(2026, 5, 1, 14, 4);
    let state = createStation({ mmsi: own });
    let effects: readonly Effect[] = [];
    const give = (event: object): void => {
      ({ state, effects } = step(state, { at, ...event } as never));
    };
    if (kind === 'position-reply') {
      give({ kind: 'call', call: composePositionRequest({ from: own, to: from }) });
      for (const { id, phase } of state.dialogues)
        if (phase === 'sending') give({ kind: 'sent', dialogue: id });
    }

    const reader = createSentenceReader({ own });
    const events = new Set<number>();
    const stages: string[] = [];
    let refined: { readonly latitude: number; readonly longitude: number } | undefined;
    let alarmed = false;
    const hand = (text: string): void => {
      for (const reading of reader.push(text, at)) {
        if (reading.kind !== 'call') continue;
        events.add(reading.event);
        stages.push(reading.stage);
        refined = 'position' in reading.call ? reading.call.position?.fraction : undefined;
        give({
          kind: 'received',
          call: reading.call,
          verdict: 'clean',
          event: reading.event,
          stage: reading.stage,
        });
        alarmed ||= effects.some((effect) => effect.kind === 'sound');
      }
    };
    let given = '';
    for (const { text, later } of [...first, ...rest]) {
      at += later;
      given += text;
      hand(text);
      if (given.includes(call) && !stages.length) notes.broken('not handed over at once', how);
      if (given.includes(call) && kind === 'distress-alert' && !alarmed)
        notes.broken('an alert without an alarm', how);
    }
    at += 10_000;
    hand('');
    for (const reading of reader.flush())
      if (reading.kind === 'call') notes.broken('a call only at the end', how);

    if (events.size !== 1) notes.broken(`${events.size} events`, how);
    const came = fate === 'at once' || fate === 'soon';
    if (stages.at(-1) !== 'final' || stages.filter((stage) => stage === 'final').length !== 1)
      notes.broken(`stages ${stages.join(', ')}`, how);
    // Enhanced position: ten-thousandths of a minute (ITU-R M.821, from memory).
    const expected = { latitude: Number(finer.slice(0, 4)), longitude: Number(finer.slice(4)) };
    if (!isDeepStrictEqual(refined, came ? expected : undefined))
      notes.broken('the position is not as fine as it was sent', `${how}: ${show(refined)}`);
    const opened = state.dialogues.filter(({ procedure }) => procedure !== 'outgoing').length;
    if (opened !== (kind === 'distress-alert' ? 1 : 0)) notes.broken(`opens ${opened} dialogues`, how);
  }
  return notes.outcome();
};
