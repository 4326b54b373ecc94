import { describeCall } from '../call/index.ts';
import { want } from '../result/internal.ts';
import { LAST_INSTANT } from '../station/internal.ts';
import type { SimulatedMoment, SimulationResult } from './simulation.ts';

/**
 * A simulation as a log book reads: time in UTC, station, what happened. Identities are written as names.
 *
 * @param result - of {@link simulate}
 * @param options - more names
 * @returns lines without line ends, in order of time
 *
 * @example
 * ```ts
 * import { simulate, writeTimeLine } from 'seahail/simulation';
 *
 * const merrow = {
 *   name: 'Merrow',
 *   settings: { mmsi: '232999871' },
 *   position: { latitude: 56.34, longitude: -6.5 },
 *   antennaHeight: 12,
 * };
 * const note = { kind: 'note', text: 'Anchored in four metres' } as const;
 * const evening = simulate([merrow], [{ afterSeconds: 60, station: 'Merrow', event: note }], { seed: 1 });
 * console.log(writeTimeLine(evening)[0]); // 18:01:00  Merrow  Anchored in four metres
 * ```
 */
export function writeTimeLine(
  result: SimulationResult,
  {
    names = {},
  }: {
    /** Names by identity, nine digits, beyond those of the stations themselves: groups for instance. */
    readonly names?: Readonly<Record<string, string>>;
  } = {},
): readonly string[] {
  want('writeTimeLine', 'what simulate returned', result, 'states');
  const known = new Map(Object.entries(names));
  for (const [name, { settings }] of Object.entries(result.states)) {
    if (settings.mmsi !== null) known.set(settings.mmsi, name);
  }
  const width = Math.max(...Object.keys(result.states).map(({ length }) => length));
  const named = (text: string) =>
    text.replace(/(?<!\d)\d{9}(?!\d)/g, (digits) => known.get(digits) ?? digits);
  const lines: string[] = [];
  const last = new Map<string, number>();
  for (const moment of result.moments) {
    const text = textOf(moment);
    if (text === null) continue;
    const line = named(text);
    // The alerts of an attempt, half a second apart, are one line.
    const key = `${moment.station} ${line}`;
    const before = last.get(key) ?? -Infinity;
    last.set(key, moment.at);
    if (moment.at - before < 1000) continue;
    lines.push(onOneLine(`${timeOf(moment.at)}  ${moment.station.padEnd(width)}  ${line}`));
  }
  return lines;
}

/** What a person or a station wrote may hold line ends and other control characters: each is shown as a space. */
function onOneLine(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ');
}

function textOf({ effect }: SimulatedMoment): string | null {
  switch (effect.kind) {
    case 'log': {
      const { call, text, what, verdict } = effect.entry;
      if (what === 'sent') return null;
      if (call === undefined) return text;
      const condition = verdict === undefined || verdict === 'clean' ? '' : `, ${verdict}`;
      return `hears${condition}: ${describeCall(call).sentence}`;
    }
    case 'send':
      return `sends${effect.times === 5 ? ' five times' : ''}: ${describeCall(effect.call).sentence}`;
    case 'sound':
      return `alarm: ${effect.alarm}`;
    case 'tune':
      return `goes to channel ${effect.channel}`;
    case 'speak':
      return `speaks on channel ${effect.channel}: ${effect.situation.replaceAll('-', ' ')}`;
    case 'ask':
      return `asks: ${effect.text}`;
    default:
      return null;
  }
}

function timeOf(at: number): string {
  return Math.abs(at) <= LAST_INSTANT ? new Date(at).toISOString().slice(11, 19) : `${at}`;
}
