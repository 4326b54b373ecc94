/**
 * Bits a second of VHF digital selective calling, and below its sub-carrier: 1700 Hz shifted by 400 Hz.
 *
 * ITU-R M.493-16 Annex 1 section 1 and IMO GMDSS Manual section 3.4 (rate, tones, tolerance of 10 Hz a tone).
 */
export const BAUD = 1200;

/** The middle of the two tones in hertz. */
export const CENTRE_HZ = 1700;

/**
 * Distance of each tone from the middle in hertz: Y, binary 1, is 1300 Hz and B, binary 0, is 2100 Hz.
 *
 * Source: ITU-R M.493-16, as publicly restated; Japan, Radio Equipment Regulations Art. 40-5: mark 1300, space 2100 Hz.
 */
export const SHIFT_HZ = 400;

/**
 * Phase gained over one bit, in twelfths of a cycle: 1300/1200 = 13/12 for Y, 2100/1200 = 21/12 for B.
 *
 * deviation: D-audio-1 (no standard known gives the phase at a change of tone; here it is continuous).
 */
export const TWELFTHS_OF_ONE = 13;
export const TWELFTHS_OF_ZERO = 21;
