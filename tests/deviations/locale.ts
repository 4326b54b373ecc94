import { expect } from 'vitest';
import { german } from '../../src/locale/de.ts';
import { french } from '../../src/locale/fr.ts';
import { dutch } from '../../src/locale/nl.ts';

export const deviations: Record<string, () => void> = {
  'D-locale-1': () => {
    for (const { translated } of [german, french, dutch]) {
      expect(translated.by).toContain('none of whom is a radio operator');
      expect(translated.note).toContain('before it is relied on');
    }
    expect(german.texts['call-kind.distress-self-cancel']).toContain('Widerruf');
  },
};
