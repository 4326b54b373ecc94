import type { NatureOfDistress, SpokenStation } from '../call/index.ts';
import type { ReportedPosition, TimeOfDay } from '../position/index.ts';
import { line, type SpokenLine } from './script.ts';
import { spell } from './spell.ts';
import type { Plain } from './texts.ts';

/** Says numbers, stations, places and times one figure at a time (IMO A.918(22), general rules, from memory). */
export interface Phrases {
  name(station: SpokenStation): string;
  /** Name three times. */
  nameThrice(station: SpokenStation): string;
  callSign(station: SpokenStation): string;
  mmsi(station: SpokenStation): string;
  /** Call sign, or the MMSI where that alone is known. */
  signOrMmsi(station: SpokenStation): string;
  position(position: ReportedPosition | null | undefined): string;
  time(time: TimeOfDay | null | undefined): string;
  digits(digits: string): string;
}

/** A missing fact, in brackets. */
export function blank(what: string): string {
  return `[${what}]`;
}

/** Phrases with the chosen form of figures. */
export function phrasesWith(figures: 'plain' | 'figure-code'): Phrases {
  const digits = (text: string) => spell(text, figures);
  const spelled = (text: string | null | undefined) => {
    const plain = given(text);
    return plain === null ? null : digits(plain);
  };
  const name = (station: SpokenStation) =>
    given(station.name) ?? spelled(station.mmsi) ?? blank('name of the station');
  const callSign = (station: SpokenStation) => `call sign ${spelled(station.callSign) ?? blank('call sign')}`;
  const mmsi = (station: SpokenStation) => `MMSI ${spelled(station.mmsi) ?? blank('MMSI')}`;
  return {
    name,
    nameThrice: (station) => Array(3).fill(name(station)).join(', '),
    callSign,
    mmsi,
    signOrMmsi: (station) =>
      given(station.callSign) === null && given(station.mmsi) !== null ? mmsi(station) : callSign(station),
    position: (position) =>
      position == null
        ? blank('position, or bearing and distance from a known place')
        : placeSaid(position, digits),
    time: (time) =>
      time == null ? `${blank('time')} UTC` : `${digits(`${pad(time.hour)}${pad(time.minute)}`)} UTC`,
    digits,
  };
}

/**
 * Natures of distress in the words of the vessel, after the IMO standard marine communication phrases, A.918(22)
 * part A1, from memory.
 */
export const natureSaid: Readonly<Record<NatureOfDistress, string>> = {
  'fire-explosion': 'I am on fire',
  flooding: 'I am flooding',
  collision: 'I have collided',
  grounding: 'I am aground',
  listing: 'I am in danger of capsizing',
  sinking: 'I am sinking',
  'disabled-adrift': 'I am not under command and adrift',
  undesignated: blank('nature of distress'),
  'abandoning-ship': 'I must abandon vessel',
  piracy: 'I am under attack by pirates',
  'man-overboard': 'I have lost a person overboard',
  'epirb-emission': blank('nature of distress'),
};

/** The same of another vessel. */
export const natureReported: Readonly<Record<NatureOfDistress, string>> = {
  'fire-explosion': 'vessel on fire',
  flooding: 'vessel flooding',
  collision: 'vessel has collided',
  grounding: 'vessel aground',
  listing: 'vessel in danger of capsizing',
  sinking: 'vessel sinking',
  'disabled-adrift': 'vessel not under command and adrift',
  undesignated: blank('nature of distress'),
  'abandoning-ship': 'crew abandoning vessel',
  piracy: 'vessel under attack by pirates',
  'man-overboard': 'person overboard',
  'epirb-emission': 'signal of an emergency beacon',
};

/** Text that says something; brackets in it would look like a blank. */
export function given(text: string | null | undefined): string | null {
  const plain = text?.replace(/[[\]]/g, '').trim();
  return plain === undefined || plain === '' ? null : plain;
}

function placeSaid(position: ReportedPosition, digits: (text: string) => string): string {
  const { latitude, longitude, fraction } = position;
  const north = `${digits(pad(latitude.degrees))} degrees ${minutes(latitude.minutes, fraction?.latitude)} minutes`;
  const east = `${digits(pad(longitude.degrees, 3))} degrees ${minutes(longitude.minutes, fraction?.longitude)} minutes`;
  return `${north} ${latitude.hemisphere === 'N' ? 'north' : 'south'}, ${east} ${longitude.hemisphere === 'E' ? 'east' : 'west'}`;

  // One decimal is what is spoken: a cable is a tenth of a minute. Cut off like the minutes themselves.
  function minutes(whole: number, tenThousandths: number | undefined): string {
    const decimal = tenThousandths === undefined ? '' : `.${Math.floor(tenThousandths / 1000)}`;
    return digits(`${pad(whole)}${decimal}`);
  }
}

function pad(value: number, length = 2): string {
  return String(value).padStart(length, '0');
}

/** Who is called: all stations unless one is named, with a note on that. */
export function called(to: SpokenStation | null | undefined, say: Phrases, note?: Plain): SpokenLine {
  return to == null
    ? line('ALL STATIONS, ALL STATIONS, ALL STATIONS', 'speech-call-all', note)
    : line(say.nameThrice(to), 'speech-call-thrice');
}

/** Who calls: name and call sign. */
export function thisIs(own: SpokenStation, say: Phrases): readonly SpokenLine[] {
  return [
    line('THIS IS', 'speech-say-this-is'),
    line(say.nameThrice(own), 'speech-own-thrice'),
    line(say.callSign(own), 'speech-own-sign'),
  ];
}
