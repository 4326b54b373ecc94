/**
 * The frequencies of Radio Regulations Appendix 18, transcribed literally and slowly: two ladders of
 * 50 kHz steps, climbed one rung at a time, with the single-frequency channels and the four-digit
 * prefixes of ITU-R M.1084 Annex 4 written out. Kilohertz.
 */
export function oracleFrequencies(m1084: string): { ship: number; coast: number } | undefined {
  let lower = 0;
  let frequency = 156_050;
  for (const channel of FIRST_LADDER) {
    if (m1084.endsWith(channel)) lower = frequency;
    frequency += 50;
  }
  frequency = 156_025;
  for (const channel of SECOND_LADDER) {
    if (m1084.endsWith(channel)) lower = frequency;
    frequency += 50;
  }
  if (lower === 0) return undefined;
  const upper = lower + 4600;
  if (m1084.length === 4 && m1084.startsWith('10')) return { ship: lower, coast: lower };
  if (m1084.length === 4 && m1084.startsWith('20')) return { ship: upper, coast: upper };
  if (SINGLE.includes(m1084)) return { ship: lower, coast: lower };
  return { ship: lower, coast: upper };
}

const FIRST_LADDER =
  '01 02 03 04 05 06 07 08 09 10 11 12 13 14 15 16 17 18 19 20 21 22 23 24 25 26 27 28'.split(' ');
const SECOND_LADDER =
  '60 61 62 63 64 65 66 67 68 69 70 71 72 73 74 75 76 77 78 79 80 81 82 83 84 85 86 87 88'.split(' ');
const SINGLE = '06 08 09 10 11 12 13 14 15 16 17 67 68 69 70 71 72 73 74 75 76 77 87 88'.split(' ');
