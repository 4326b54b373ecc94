import { want } from '../result/internal.ts';
import { type EventWithoutTime, type StationEvent, step } from '../station/index.ts';
import { isForStation, isWaitingToSend, nextRandom } from '../station/internal.ts';
import { createAgenda } from './agenda.ts';
import { createAir, whoHearsWhom } from './air.ts';
import { reactionTo } from './person.ts';
import { aimed, createPlace, fixOf, type Place } from './place.ts';
import type { ScriptLine, SimulatedMoment, SimulatedStation, SimulationResult } from './simulation.ts';
import { type Heard, type Jams, receiversOf, type Transmission, transmissionsOf } from './transmission.ts';

type Thing =
  | { readonly kind: 'event'; readonly station: number; readonly event: EventWithoutTime }
  | { readonly kind: 'wake'; readonly station: number; readonly at: number }
  | { readonly kind: 'carrier'; readonly transmission: Transmission }
  | { readonly kind: 'end'; readonly transmission: Transmission; readonly dialogue: number | null };

const DEFAULT_START = 1_780_336_800_000;

/** A position receiver gives a fix every second; every five minutes is enough for what is simulated here. */
const FIX_INTERVAL = 300_000;

/**
 * Several stations on one channel 70, each run by {@link step}, with people who act, and a channel on which bursts
 * collide, fade at the radio horizon and pick up bit errors. The same arguments give the same outcome.
 *
 * Two transmissions that overlap at a receiver spoil each other there: the capture of the stronger one is left out.
 * Stations do not move. A man-made world: figures from it are no forecast of real traffic.
 *
 * @param stations - who takes part
 * @param script - what people do at set times
 * @param options - seed, start, duration, errors
 * @returns every effect of every station in order, the stations at the end, and the load of the channel
 * @throws RangeError when two stations have one name or the script names none, a position is no place on Earth, an
 * antenna height is not a finite number of metres, or a station's settings are refused
 *
 * @see {@link writeTimeLine}
 *
 * @example
 * ```ts
 * import { composeTestCall } from 'seahail/call';
 * import { simulate } from 'seahail/simulation';
 *
 * const place = { position: { latitude: 56.34, longitude: -6.5 }, antennaHeight: 10 };
 * const { channel70 } = simulate(
 *   [
 *     { name: 'Merrow', settings: { mmsi: '232999871' }, ...place },
 *     { name: 'Skerra Coastguard', settings: { mmsi: '002329990', equipment: 'coast', designated: true }, ...place },
 *   ],
 *   [
 *     {
 *       afterSeconds: 5,
 *       station: 'Merrow',
 *       event: { kind: 'call', call: composeTestCall({ from: '232999871', to: '002329990' }) },
 *     },
 *   ],
 *   { seed: 1, bitErrorRate: 0 },
 * );
 * console.log(channel70.bursts, channel70.meant.clean); // 2 2
 * ```
 */
export function simulate(
  stations: readonly SimulatedStation[],
  script: readonly ScriptLine[],
  options: {
    /** Any integer: the same seed gives the same simulation. */
    readonly seed: number;
    /** Start, epoch milliseconds; 2026-06-01 18:00 UTC when absent. */
    readonly start?: number;
    /** Seconds to simulate; one hour when absent. */
    readonly durationSeconds?: number;
    /** Share of bits that come wrong even without another transmission on top; 0.001 when absent. */
    readonly bitErrorRate?: number;
    /** Milliseconds until a station notices that another transmits; 10 when absent. */
    readonly carrierDelayMs?: number;
  },
): SimulationResult {
  want('simulate', 'stations', stations, 'map');
  want('simulate', 'options with seed', options, 'seed');
  const {
    seed,
    start = DEFAULT_START,
    durationSeconds = 3600,
    bitErrorRate = 0.001,
    carrierDelayMs = 10,
  } = options;
  const places = stations.map((station, index) => createPlace(station, index, seed + index));
  const byName = new Map(places.map((place) => [place.station.name, place]));
  if (byName.size < places.length)
    throw new RangeError('simulate: expected a different name for every station');
  for (const { name, position, antennaHeight } of stations) {
    const { latitude, longitude } = position;
    if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180))
      throw new RangeError(
        `simulate: position of '${name}': expected a place on Earth, got ${latitude} ${longitude}`,
      );
    if (!(antennaHeight >= 0 && antennaHeight < Infinity))
      throw new RangeError(`simulate: antenna height of '${name}': expected metres, got ${antennaHeight}`);
  }
  const hearers = whoHearsWhom(stations);
  const air = createAir(hearers);
  const agenda = createAgenda<Thing>();
  const moments: SimulatedMoment[] = [];
  const count = { bursts: 0, heard: 0, clean: 0, lost: 0, attempts: 0, spoilt: 0, events: 0 };
  let random = seed >>> 0;
  let now = start;

  for (const place of places) {
    if (place.station.receiver !== false)
      agenda.add(start, { kind: 'event', station: place.index, event: fixOf(place) });
  }
  for (const { afterSeconds, station, event } of script) {
    const place = byName.get(station);
    if (place === undefined) throw new RangeError(`simulate: no station has the name '${station}'`);
    agenda.add(start + afterSeconds * 1000, { kind: 'event', station: place.index, event });
  }
  const end = start + durationSeconds * 1000;
  for (let next = agenda.take(); next !== null && next.at <= end; next = agenda.take()) {
    now = next.at;
    happen(next.thing);
  }
  const busySeconds = air.timeInUse(end) / 1000;
  return {
    moments,
    states: Object.fromEntries(places.map(({ station, state }) => [station.name, state])),
    channel70: {
      bursts: count.bursts,
      busySeconds,
      erlang: busySeconds / durationSeconds,
      meant: { heard: count.heard, clean: count.clean, lost: count.lost },
      alerts: { attempts: count.attempts, spoilt: count.spoilt },
      events: count.events,
    },
  };

  function draw(): number {
    const [value, next] = nextRandom(random);
    random = next;
    return value;
  }

  function happen(thing: Thing): void {
    switch (thing.kind) {
      case 'event': {
        const place = places[thing.station] as Place;
        give(place, aimed(place, thing.event));
        if (thing.event.kind === 'fix') {
          agenda.add(now + FIX_INTERVAL, { kind: 'event', station: thing.station, event: fixOf(place) });
        }
        break;
      }
      case 'wake': {
        const place = places[thing.station] as Place;
        if (place.state.wakeAt === thing.at) give(place, { kind: 'clock' });
        break;
      }
      case 'carrier':
        for (const hearer of hearers[thing.transmission.sender] ?? [])
          changeCarrier(places[hearer] as Place, 1);
        break;
      case 'end':
        endBurst(thing.transmission, thing.dialogue);
    }
  }

  /** Gives an event to a station, the state of its channel first, and carries out what it wants. */
  function give(place: Place, event: EventWithoutTime): void {
    const busy = place.carriers > 0;
    if (event.kind !== 'channel' && place.state.channelBusy !== busy) give(place, { kind: 'channel', busy });
    count.events++;
    const { station } = place;
    const clockErrorMs = station.clockErrorMs ?? 0;
    const { state, effects } = step(place.state, { ...event, at: now + clockErrorMs } as StationEvent);
    place.state = state;
    for (const effect of effects) {
      if (effect.kind === 'wake') {
        if (effect.at !== null)
          agenda.add(effect.at - clockErrorMs, { kind: 'wake', station: place.index, at: effect.at });
        continue;
      }
      moments.push({ at: now, station: station.name, effect });
      if (effect.kind === 'send' && effect.dialogue !== null)
        startSending(place, effect.call, effect.times, effect.dialogue);
      if (effect.kind === 'stop-sending') place.sending = [];
      const reaction = station.person === undefined ? null : reactionTo(station.person, state, effect);
      if (reaction !== null) {
        const [least, most] = reaction.after;
        const after = (least + draw() * (most - least)) * 1000;
        agenda.add(now + after, { kind: 'event', station: place.index, event: reaction.event });
      }
    }
  }

  function startSending(place: Place, call: Transmission['call'], times: number, dialogue: number): void {
    const bursts = transmissionsOf(place.index, call, times, now);
    const [first] = bursts;
    const last = bursts.at(-1);
    if (first === undefined || last === undefined) return;
    place.sending = bursts;
    air.begin(bursts, now);
    count.bursts += bursts.length;
    agenda.add(now + carrierDelayMs, { kind: 'carrier', transmission: first });
    for (const burst of bursts) {
      agenda.add(burst.end, { kind: 'end', transmission: burst, dialogue: burst === last ? dialogue : null });
    }
  }

  function endBurst(transmission: Transmission, dialogue: number | null): void {
    const sender = places[transmission.sender] as Place;
    const reached = hearers[sender.index] ?? [];
    const isBrokenOff = !sender.sending.includes(transmission);
    if (dialogue !== null) {
      air.end(now);
      for (const hearer of reached) changeCarrier(places[hearer] as Place, -1);
    }
    if (isBrokenOff) return;
    if (dialogue !== null) {
      sender.sending = [];
      give(sender, { kind: 'sent', dialogue });
    }
    const isAlert = transmission.call.kind === 'distress-alert';
    const receive = receiversOf(transmission, bitErrorRate, draw);
    for (const hearer of reached) {
      const heard = hearBurst(places[hearer] as Place, transmission, receive);
      if (isAlert && heard) sender.warned.add(hearer);
    }
    if (isAlert && dialogue !== null) {
      count.attempts += reached.length;
      count.spoilt += reached.filter((hearer) => !sender.warned.has(hearer)).length;
      sender.warned.clear();
    }
  }

  /** Whether the station could use it. */
  function hearBurst(
    place: Place,
    transmission: Transmission,
    receive: (jams: Jams) => Heard | null,
  ): boolean {
    const { call } = transmission;
    const isMeant = isForStation(place.state, call);
    if (!isMeant && !place.state.settings.logOthers) return false;
    const heard = receive(air.jams(place.index, transmission));
    if (isMeant) {
      if (heard === null) count.lost++;
      else count.heard++;
      if (heard?.verdict === 'clean') count.clean++;
    }
    if (heard !== null) give(place, { kind: 'received', ...heard });
    return heard !== null && heard.verdict !== 'doubtful';
  }

  /** A station is told of its channel only while a call of its own waits: otherwise it hears of it with its next event. */
  function changeCarrier(place: Place, by: 1 | -1): void {
    const was = place.carriers > 0;
    place.carriers += by;
    const busy = place.carriers > 0;
    if (was !== busy && place.state.dialogues.some(isWaitingToSend)) give(place, { kind: 'channel', busy });
  }
}
