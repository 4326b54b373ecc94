import type { BurstTexts } from '../../burst/internal.ts';
import type { Translation } from '../catalogue.ts';

export const burst: Translation<BurstTexts> = {
  'burst-input': [
    '{subject:burst-subject}[ {which}]: {expected} erwartet, {received} erhalten',
    '{accepted:burst-accepted}',
  ],
  'burst-not-found': [
    'Kein Anruf lesbar (höchstens {sure} % sicher)',
    'die Phasierungsfolge und was auf sie folgt',
  ],
  'burst-atis-not-found': 'Keine ATIS-Aussendung gefunden',
  'burst-check-wrong': [
    'Fehlerprüfzeichen: {expected} erwartet, {received} erhalten. Den Anruf als fehlerhaft empfangen anzeigen. Nicht danach handeln',
    '{computed}',
  ],
  'burst-doubtful': [
    'Anruf ist nur zu {received} sicher. Ihn als fehlerhaft empfangen anzeigen. Nicht danach handeln',
    'zu mindestens 99 % sicher',
  ],
  'burst-repaired':
    'Anruf ist zu {sure} % sicher, wurde aber nicht fehlerfrei empfangen. Nie automatisch danach handeln',
  'burst-format-once': [
    'Formatkennung eines Anrufs ohne Adresse: {expected} erwartet, {received} erhalten',
    'mindestens zwei Kopien',
  ],
  'burst-cut-short': 'Eingabe endet vor dem Ende des Anrufs',
  'burst-expansion-broken':
    'Erweiterung nach dem Anruf war nicht lesbar: der Anruf selbst ist nicht betroffen',
  'burst-inverted': 'Jedes Bit ist invertiert: die beiden Töne sind am Empfänger vertauscht',
  'burst-expansion-layout': ['Erweiterung: Aufbau {expected} erwartet, {received} erhalten', "'{usual}'"],
  'burst-subject.bits': 'Bitfolge',
  'burst-subject.bit': 'Bit Nr.',
  'burst-subject.soft-bits': 'Soft-Werte',
  'burst-subject.symbols': 'Symbolfolge',
  'burst-subject.symbol': 'Symbol Nr.',
  'burst-subject.calls': 'Anrufe',
  'burst-subject.atis': 'ATIS-Bits',
  'burst-subject.option': 'Option',
  'burst-accepted.bits': "ein Text aus '0', '1' und '?' oder ein Array aus 0, 1 und null",
  'burst-accepted.bit': "0, 1 oder fehlend ('?' im Text, null im Array)",
  'burst-accepted.numbers': 'ein Array von Zahlen',
  'burst-accepted.symbols': 'ein Array aus ganzen Zahlen von 0 bis 127 und null',
  'burst-accepted.symbol': 'eine ganze Zahl von 0 bis 127 oder null',
  'burst-accepted.calls': 'ein Array von 1 bis 5 Anrufen',
  'burst-accepted.atis': 'Text aus 0 und 1',
  'burst-accepted.number': 'eine endliche Zahl',
  'burst-accepted.kinds': 'bits, soft-bits oder symbols',
};
