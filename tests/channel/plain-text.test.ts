import { describe, expect, it } from 'vitest';
import { parseDesignator } from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';

const read = (input: string) => valueOf(parseDesignator(input)).text;

describe('text as fields and keyboards deliver it', () => {
  it('is read from a field filled up with blanks, up to 200 characters', () => {
    expect(read('16'.padStart(200))).toBe('16');
    expect(read('16'.padEnd(200))).toBe('16');
    expect(parseDesignator('16'.padEnd(201)).ok).toBe(false);
  });

  it('is read up to 40 characters without the blanks around it', () => {
    expect(read(`ch${'6'.padStart(38)}`)).toBe('06');
    expect(parseDesignator(`ch${'6'.padStart(39)}`).ok).toBe(false);
  });

  it('has digits of scripts that stand side by side in Unicode each read as what they are', () => {
    // Myanmar Pao Karen 0 to 9, and Eastern Pwo Karen 0 to 9 right behind them (Unicode 16, UnicodeData.txt).
    const sixteens = ['\u{116d1}\u{116d6}', '\u{116db}\u{116e0}'];
    for (const text of sixteens) {
      // An engine with an older Unicode knows no such digits: then they name no channel.
      if (/^\p{Nd}+$/u.test(text)) expect(read(text)).toBe('16');
      else expect(parseDesignator(text).ok).toBe(false);
    }
  });
});
