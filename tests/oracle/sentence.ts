/**
 * Slow, literal readings of the framing and of the `DSC` field list of IEC 61162-1, as publicly restated,
 * to compare the shipped code with. Nothing here is shared with `src`.
 */

/** Exclusive OR of the seven low bits of all characters between start and star, bit by bit. */
export function checksumByBits(body: string): string {
  let digits = '';
  for (const nibble of [
    [7, 6, 5, 4],
    [3, 2, 1, 0],
  ]) {
    let value = 0;
    for (const bit of nibble) {
      const ones = [...body].filter((character) => (character.charCodeAt(0) >> bit) % 2 === 1).length;
      value = value * 2 + (ones % 2);
    }
    digits += '0123456789ABCDEF'[value];
  }
  return digits;
}

export interface DscLine {
  format: string;
  station: string;
  category: string;
  fourth: string;
  fifth: string;
  sixth: string;
  seventh: string;
  ship: string;
  nature: string;
  end: string;
  expansion: string;
}

/** Notes 8 and 9: what field 6 is, by its length. */
export function natureOfSixthField(sixth: string): 'nothing' | 'position' | 'frequencies' | 'neither' {
  if (sixth === '') return 'nothing';
  if (![...sixth].every((digit) => digit >= '0' && digit <= '9')) return 'neither';
  if (sixth.length === 10) return 'position';
  if (sixth.length === 12 && sixth.slice(0, 2) === '55') return 'position';
  return [6, 8, 12, 16].includes(sixth.length) ? 'frequencies' : 'neither';
}

/** Notes 1 to 11: what the fields of a received call mean, as a row of plain words. */
export function meaningOfFields(line: DscLine): Record<string, string | null> {
  const alert = line.format === '12';
  const distressRelated =
    !alert &&
    (line.category === '12' || line.ship !== '' || line.nature !== '') &&
    (line.fourth === '10' || line.fourth === '12');
  const sixth = natureOfSixthField(line.sixth);
  return {
    nature: alert ? line.fourth : distressRelated ? line.nature : null,
    telecommand: alert ? null : line.fourth,
    secondTelecommand: alert || distressRelated ? null : line.fifth,
    subsequent: alert || distressRelated ? line.fifth : null,
    position: sixth === 'position' ? line.sixth.slice(-10) : null,
    frequencies: sixth === 'frequencies' ? line.sixth : null,
    time: line.format === '23' ? null : line.seventh,
    telephone: line.format === '23' ? line.seventh : null,
    end: { R: '117', B: '122', S: '127' }[line.end] ?? null,
  };
}
