/**
 * The sub-carrier of VHF digital selective calling: 1700 Hz shifted by 400 Hz at 1200 baud, so that Y (binary 1)
 * is 1300 Hz and B (binary 0) is 2100 Hz.
 *
 * ITU-R M.493-15 Annex 1 section 1 and IMO GMDSS Manual section 3.4 (rate, tones, tolerance of 10 Hz a tone);
 * that B is the higher tone is from memory of M.493. Phase continuity at a change of tone is from memory too
 * (deviation: D-audio-1).
 */
export const BAUD = 1200;

/** The middle of the two tones in hertz. */
export const CENTRE_HZ = 1700;

/** Distance of each tone from the middle in hertz. */
export const SHIFT_HZ = 400;

/** Phase gained over one bit, in twelfths of a cycle: 1300/1200 = 13/12 for Y, 2100/1200 = 21/12 for B. */
export const TWELFTHS_OF_ONE = 13;
export const TWELFTHS_OF_ZERO = 21;
