import { inAppendix18, isSingleFrequency, LEG_DISTANCE_KHZ, lowerLegKHz } from './appendix-18.ts';

/** The two sides of a channel by the arithmetic of its number, whole kHz. */
export interface ChannelFrequencies {
  readonly mode: 'simplex' | 'duplex';
  /** Where the ship side transmits. */
  readonly shipKHz: number;
  /** Where the coast side transmits; equal to `shipKHz` on a single-frequency channel. */
  readonly coastKHz: number;
}

/**
 * The frequencies that follow from a channel's number alone.
 *
 * A plan may keep a channel for one side only, or not have it: ask {@link findChannel} for that.
 *
 * @param named - what {@link parseDesignator} gave, or a channel
 * @returns kHz of both sides, or `null` where no rule leads from the name to a frequency: private numbers,
 * weather channels and the channels 0, M and M2 of the United Kingdom
 *
 * Source: RR Appendix 18; the arithmetic was compared with all 57 rows of 47 CFR 80.871(d), 2015 edition.
 * Channels 87 and 88 are single-frequency since WRC-15.
 */
export function frequencyOf({ m1084 }: { readonly m1084: string | null }): ChannelFrequencies | null {
  if (m1084 === null) return null;
  const number = Number(m1084.slice(-2));
  if (!inAppendix18(number)) return null;
  const lower = lowerLegKHz(number);
  const prefix = m1084.slice(0, -2);
  if (prefix === '20') return single(lower + LEG_DISTANCE_KHZ);
  if (prefix === '10' || isSingleFrequency(number)) return single(lower);
  return { mode: 'duplex', shipKHz: lower, coastKHz: lower + LEG_DISTANCE_KHZ };
}

function single(kHz: number): ChannelFrequencies {
  return { mode: 'simplex', shipKHz: kHz, coastKHz: kHz };
}
