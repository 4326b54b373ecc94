import type { BurstTexts } from '../../burst/internal.ts';
import type { Translation } from '../catalogue.ts';

export const burst: Translation<BurstTexts> = {
  'burst-input': [
    '{subject:burst-subject}[ {which}]: verwacht {expected}, gekregen {received}',
    '{accepted:burst-accepted}',
  ],
  'burst-not-found': ['Geen oproep leesbaar (hoogstens {sure} % zeker)', 'de fasereeks en wat erop volgt'],
  'burst-atis-not-found': 'Geen ATIS-uitzending gevonden',
  'burst-check-wrong': [
    'Foutcontroleteken: verwacht {expected}, gekregen {received}. Toon de oproep als foutief ontvangen. Handel er niet naar',
    '{computed}',
  ],
  'burst-doubtful': [
    'Oproep is slechts {received} zeker. Toon hem als foutief ontvangen. Handel er niet naar',
    'minstens 99 % zeker',
  ],
  'burst-repaired': 'Oproep is {sure} % zeker maar niet foutloos ontvangen. Handel er nooit automatisch naar',
  'burst-format-once': [
    'Formaataanduiding van een oproep zonder adres: verwacht {expected}, gekregen {received}',
    'twee kopieën of meer',
  ],
  'burst-cut-short': 'Invoer eindigt voor het einde van de oproep',
  'burst-expansion-broken': 'Uitbreiding na de oproep was onleesbaar: de oproep zelf is niet aangetast',
  'burst-inverted': 'Elke bit is omgekeerd: de twee tonen zijn bij de ontvanger verwisseld',
  'burst-expansion-layout': [
    'Uitbreiding: verwacht de indeling {expected}, gekregen {received}',
    "'{usual}'",
  ],
  'burst-subject.bits': 'Bitreeks',
  'burst-subject.bit': 'Bit nr.',
  'burst-subject.soft-bits': 'Zachte waarden',
  'burst-subject.symbols': 'Symbolenreeks',
  'burst-subject.symbol': 'Symbool nr.',
  'burst-subject.calls': 'Oproepen',
  'burst-subject.atis': 'ATIS-bits',
  'burst-subject.option': 'Optie',
  'burst-accepted.bits': "een tekst van '0', '1' en '?' of een array van 0, 1 en null",
  'burst-accepted.bit': "0, 1 of ontbrekend ('?' in een tekst, null in een array)",
  'burst-accepted.numbers': 'een array van getallen',
  'burst-accepted.symbols': 'een array van gehele getallen van 0 tot 127 en null',
  'burst-accepted.symbol': 'een geheel getal van 0 tot 127 of null',
  'burst-accepted.calls': 'een array van 1 tot 5 oproepen',
  'burst-accepted.atis': 'tekst van 0 en 1',
  'burst-accepted.number': 'een eindig getal',
  'burst-accepted.kinds': 'bits, soft-bits of symbols',
};
