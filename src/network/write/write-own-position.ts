import type { GnssFix } from '../../report/index.ts';
import { FIX_QUALITIES } from '../../report/internal.ts';
import { want } from '../../result/internal.ts';
import { COURSE_AND_SPEED, GNSS_POSITION, POSITION } from '../message/layout.ts';
import type { NetworkFrame } from '../transport/frame.ts';
import { type MessageOptions, messageFrames } from './message-frames.ts';

const DAY = 86_400_000;

/**
 * Writes an own position for the nodes of the network: PGN 129025, course and speed (129026) where they are known, and
 * 129029 with date, time and quality when the fix has its date.
 *
 * Autopilot, display and radio act on it. Write it only where no other node sends the position, only from a receiver
 * of this vessel, under an address that your node has claimed, and stop when the receiver stops.
 *
 * @param fix - as a reader gives it; one without a position gives no frame
 * @param options - source address and sequence counter
 * @returns the frames in order
 * @throws RangeError when the address or the counter is out of range
 *
 * Source: public list of parameter groups of IEC 61162-3 (D-network-2).
 *
 * @example
 * ```ts
 * import { writeOwnPositionFrames } from 'seahail/network';
 *
 * const position = { latitude: 56.3388, longitude: -6.502 };
 * const fix = { formatter: 'GLL', position, quality: 'autonomous', time: null, instant: null, speed: null, course: null } as const;
 * console.log(writeOwnPositionFrames(fix, { source: 40 }).length); // 1
 * ```
 */
export function writeOwnPositionFrames(fix: GnssFix, options: MessageOptions): NetworkFrame[] {
  want('writeOwnPositionFrames', 'a fix', fix, 'position');
  want('writeOwnPositionFrames', 'options with source', options, 'source');
  const { position, quality, instant, speed, course } = fix;
  if (position === null) return [];
  const frames = messageFrames(POSITION, position, options);
  if (speed !== null || course !== null) {
    const motion = {
      sid: null,
      reference: 0,
      course: course === null ? null : ((course % 360) * Math.PI) / 180,
      speed: speed === null ? null : (speed * 1852) / 3600,
    };
    frames.push(...messageFrames(COURSE_AND_SPEED, motion, options));
  }
  if (instant === null) return frames;
  const gnss = {
    sid: null,
    date: Math.floor(instant / DAY),
    time: (instant - Math.floor(instant / DAY) * DAY) / 1000,
    latitude: wide(position.latitude),
    longitude: wide(position.longitude),
    altitude: null,
    system: null,
    method: Math.max(FIX_QUALITIES.indexOf(quality), quality === 'unstated' ? 1 : 0),
    integrity: 0,
    satellites: null,
    hdop: null,
    pdop: null,
    geoid: null,
    stations: 0,
  };
  return [...frames, ...messageFrames(GNSS_POSITION, gnss, options)];
}

/** Halves of a 64-bit number of 1e-16 degrees: steps of 1e-8 degrees are exact. */
function wide(degrees: number): [high: number, low: number] {
  const steps = Math.round(degrees * 1e8);
  // The low half of a product of which a number keeps only the high digits.
  const low = Math.imul(steps, 1e8) >>> 0;
  return [Math.round((steps * 1e8 - low) / 2 ** 32), low];
}
