import type { Call, CallFields } from '../call/index.ts';
import type { Coordinates } from '../position/index.ts';
import type { Issue, Notice } from '../result/index.ts';
import type { AisReport } from './ais-report.ts';
import type { GnssFix } from './gnss-fix.ts';
import type { Sentence } from './source.ts';

/** Readings by kind, with their fields. */
export interface Readings {
  /** A call, from a `DSC` sentence and the `DSE` sentences that belong to it. */
  readonly call: {
    /**
     * Number of the call in this stream, from 1. A later reading with the same number is about the same call:
     * finer (its expansion came) or the same again (`repeat`). Keep the latest.
     */
    readonly event: number;
    /** 0 the first time; 1, 2 … when the same alert or report was sent again. */
    readonly repeat: number;
    /** `'provisional'` while an announced expansion is still awaited: another reading of the event will follow. */
    readonly stage: 'provisional' | 'final';
    readonly call: Call;
    /**
     * Which way the `DSC` sentence travels. `'received'`: from the radio, which heard the call; field 2 is the caller.
     * `'commanded'`: to the radio, which is to place the call; field 2 is the called station. The sentence itself does
     * not say which: wiring does.
     */
    readonly direction: 'received' | 'commanded';
    /** Talker of the `DSC` sentence. */
    readonly talker: string;
    /** The time of the call's position with its date, when both a time and an instant of receipt are known. */
    readonly positionTime: {
      /** Start of that minute, epoch milliseconds. */
      readonly at: number;
      /** Seconds from then to the receipt. */
      readonly age: number;
    } | null;
  };
  /** A `DSE` sentence that belongs to no call: a query, or the rest of a call that was not heard. */
  readonly expansion: {
    /** Nine digits, or the field as it stood. */
    readonly station: string;
    readonly flag: 'automatic' | 'query' | 'reply' | 'unknown';
    readonly sets: CallFields['expansion'];
  };
  /** Own position, from `RMC`, `GLL`, `GGA` or `GNS`. */
  readonly 'own-position': {
    readonly fix: GnssFix;
  };
  /** Date and time, from `ZDA`. */
  readonly clock: {
    /** Epoch milliseconds. */
    readonly instant: number;
  };
  /** A waypoint, from `WPL`. */
  readonly waypoint: {
    readonly waypoint: {
      readonly position: Coordinates;
      /** Plain text. Keep it short: how much a plotter shows is unknown, about ten characters are safe (common practice, no source). */
      readonly name: string;
    };
  };
  /** A target, from `TLL`. */
  readonly target: {
    readonly target: {
      /** 0–99. */
      readonly number: number;
      readonly position: Coordinates;
      /** Plain text, short. */
      readonly name: string;
      /** UTC of the position, `null` when unknown. */
      readonly time: GnssFix['time'];
      /** What the tracker says; `null` when it said something else. */
      readonly status: 'lost' | 'acquiring' | 'tracking' | null;
      /** Whether it is the reference target. */
      readonly reference: boolean;
    };
  };
  /** What an AIS message says of a station, from `VDM` (others) or `VDO` (own ship). */
  readonly ais: {
    /** Whether it is what the own transponder sent. */
    readonly own: boolean;
    readonly channel: 'A' | 'B' | null;
    readonly report: AisReport;
  };
  /**
   * Course, speed, heading or magnetic variation of the own vessel, as one message has them; what it does not have, or
   * marks as not available, is absent.
   */
  readonly motion: {
    /** Course over ground, degrees true. */
    readonly course?: number;
    /** Course over ground, degrees magnetic. */
    readonly magneticCourse?: number;
    /** Speed over ground, knots. */
    readonly speed?: number;
    /** Degrees true. */
    readonly heading?: number;
    /** Degrees magnetic. */
    readonly magneticHeading?: number;
    /** Degrees, east positive. */
    readonly variation?: number;
  };
  /** Settings of a VHF radio. */
  readonly radio: {
    /** Frequency that it receives on, kHz, or `null`. */
    readonly receiveKHz: number | null;
    /** Frequency that it transmits on, kHz, or `null`. */
    readonly transmitKHz: number | null;
    /** Channel as the radio writes it, e.g. `'16'` or `'900016'`. */
    readonly channel: string | null;
    /** Watts. */
    readonly power: number | null;
  };
  /** A man-overboard device or button. */
  readonly 'man-overboard': {
    /** `'activated'` by the device or a button, `'test'`, or `null` for anything else. */
    readonly status: 'activated' | 'test' | null;
    readonly position: Coordinates | null;
    /** Epoch milliseconds of the position, or `null`. */
    readonly instant: number | null;
    /** Identity of the vessel it belongs to: nine digits, or `null`. */
    readonly mmsi: string | null;
  };
  /** A safety related text that AIS carries (ITU-R M.1371, messages 12 and 14). */
  readonly 'safety-text': {
    /** Nine digits. */
    readonly from: string;
    /** Nine digits, or `null` for everyone. */
    readonly to: string | null;
    readonly text: string;
  };
  /** Identification of a network node. */
  readonly node: {
    /** Its address, 0 to 251; 254 when it has none. */
    readonly source: number;
    /** The eight bytes of its NAME as sixteen hexadecimal digits, highest first, or `null` in other messages. */
    readonly name: string | null;
    /** Maker, function and class by the numbers of their public lists, or `null`. */
    readonly manufacturer: number | null;
    readonly function: number | null;
    readonly deviceClass: number | null;
    /** Model, from the product information, or `null`. */
    readonly model: string | null;
  };
  /** A sound sentence that this library has no meaning for, or whose fields hold none. */
  readonly other: object;
  /** A line that is not a sentence, or a damaged one. */
  readonly damaged: {
    /** As it stood; empty when it was too long to keep. */
    readonly text: string;
    /** Characters thrown away unread because the line had no end. */
    readonly dropped: number;
    /** At least one: what is wrong with each piece it fell into, the first few of them. */
    readonly issues: readonly Issue[];
  };
}

/**
 * One thing that a stream said: `Reading<'call'>` is one kind, `Reading` any. `Source` is what readings are made from:
 * sentences, or messages of the network.
 */
export type Reading<Kind extends keyof Readings = keyof Readings, Source = Sentence> = {
  [K in Kind]: {
    readonly kind: K;
    /** Line or frame that it begins with, counted from 1. */
    readonly line: number;
    /** Characters before that line, bytes when bytes were pushed; 0 for frames. */
    readonly offset: number;
    /**
     * When it was received, epoch milliseconds: as given with the chunk, else by the TAG block, else by the
     * last date and time in the stream, else by the option `now`, else `null`.
     */
    readonly at: number | null;
    readonly notices: readonly Notice[];
    /** The sentences or messages it was read from, as received, in order; empty when nothing could be kept. */
    readonly sources: readonly Source[];
  } & Readings[K];
}[Kind];
