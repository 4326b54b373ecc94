import type { PositionTexts } from '../../position/internal.ts';
import type { Translation } from '../catalogue.ts';

export const position: Translation<PositionTexts> = {
  'position-minutes': ['Positie: verwacht {expected}, gekregen {received}', 'minuten onder 60'],
  'position-latitude-range': ['Positie: verwacht {expected}, gekregen {received}', 'breedte tot 90 graden'],
  'position-longitude-range': ['Positie: verwacht {expected}, gekregen {received}', 'lengte tot 180 graden'],
  'position-not-text': ['Positie: verwacht {expected}, gekregen {received}', 'tekst'],
  'position-too-long': ['Positie: verwacht {expected}, gekregen {count}', 'hoogstens 200 tekens'],
  'position-character': [
    'Positie: verwacht {expected}, gekregen {received}',
    'cijfers, graadtekens, plus of min en N, S, E of W',
  ],
  'position-word': ['Positie: verwacht {expected}, gekregen {received}', 'N, S, E of W of een eenheid'],
  'position-number': ['Positie: verwacht {expected}, gekregen {received}', 'één decimaalteken per getal'],
  'position-form': ['Positie: verwacht {expected}', 'breedte en lengte, elk van één tot drie getallen'],
  'position-labels': [
    'Positie: verwacht {expected}',
    'een opschrift voor de breedte en een voor de lengte, of geen',
  ],
  'position-hemisphere': [
    'Positie: verwacht {expected}, gekregen {received}',
    'één van N of S en één van E of W',
  ],
  'position-no-hemisphere': [
    'Positie: verwacht {expected}, geen van beide gekregen',
    'N of S en E of W, of plus of min',
  ],
  'position-sign-and-letter': [
    'Positie: verwacht {expected}, beide gekregen',
    'plus of min, of een letter voor het halfrond',
  ],
  'position-label-and-letter': [
    'Positie: verwacht {expected}, gekregen {received}',
    'opschriften die met de letters overeenkomen',
  ],
  'position-letter-o': [
    'Positie: verwacht {expected}, gekregen {received}',
    'W of E in plaats van O, dat voor de een west en voor de ander oost is',
  ],
  'position-dash': [
    'Positie: verwacht {expected}, gekregen {received}',
    'letters voor het halfrond, of een spatie voor een min',
  ],
  'position-comma': [
    'Positie: verwacht {expected}, gekregen {received}',
    'een komma die maar op één manier te lezen is',
  ],
  'position-packed': [
    'Positie: verwacht {expected}, gekregen {received}',
    'de cijfers van ISO 6709, of een spatie tussen de coördinaten',
  ],
  'position-decimals': [
    'Positie: verwacht {expected}, gekregen {received}',
    'decimalen alleen in het laatste deel',
  ],
  'position-seconds': ['Positie: verwacht {expected}, gekregen {received}', 'seconden onder 60'],
  'position-geo-crs': ['Positie: verwacht {expected}, gekregen {received}', 'wgs84'],
  'position-geo-rest': 'Positie gelezen zonder {received}',
  'position-digits': ['Positie: verwacht {expected}, gekregen {received}', 'tien cijfers'],
  'position-quadrant': ['Positie: verwacht {expected}, gekregen {received}', 'kwadrant 0, 1, 2 of 3'],
  'position-fraction-digits': [
    'Positie: verwacht {expected}, gekregen {received}',
    'acht cijfers van minuten',
  ],
  'position-area-digits': ['Gebied: verwacht {expected}, gekregen {received}', 'tien cijfers'],
  'position-fraction-alone': [
    'Positie: verwacht {expected}, gekregen {received}',
    'geen decimalen na tien negens, die geen positie geven',
  ],
  'position-area-past-pole': [
    'Gebied: verwacht {expected}, gekregen {received}',
    'een gebied dat bij de pool eindigt',
  ],
  'position-area-empty': ['Gebied: verwacht {expected}, gekregen {received}', 'een gebied met twee zijden'],
  'position-bounds': '{parts}',
  'position-bounds-within': 'binnen {far} zeemijl',
  'position-bounds-at': 'op {far} zeemijl',
  'position-bounds-between': 'tussen {near} en {far} zeemijl',
  'position-bounds-bearing': 'ware peiling {from} graden',
  'position-bounds-sector': 'ware peiling {from} tot {to} graden',
  'position-bounds-no-bearing': 'peiling onbekend',
  'position-bounds-no-time': 'tijd van de positie niet bekend',
  'position-bounds-ahead': 'tijd van de positie ligt voor op de klok',
  'position-bounds-new': 'positie minder dan een minuut oud',
  'position-bounds-minutes': 'positie {minutes} {minutes:fix-minutes} oud',
  'position-bounds-hours': 'positie {hours} uur {minutes} min oud',
  'position-bounds-still': 'verplaatsing sindsdien niet meegerekend',
  'fix-minutes.1': 'minuut',
  'fix-minutes.*': 'minuten',
  'position-plot-caution':
    'Posities zoals gemeld in oproepen, ze kunnen oud of onjuist zijn. Dit is geen radar: gebruik het niet om aanvaringen te vermijden',
  'position-plot-title': 'Gemelde posities',
  'position-plot-own-ship': 'eigen schip',
  'position-plot-middle': 'In het midden: {name}, {position}',
  'position-plot-rings': 'Noord is boven. Ringen om de {miles}',
  'position-plot-no-position': 'geen positie',
  'position-plot-station': '{name}: {where}',
  'position-plot-distress': 'In nood: {name}: {where}',
  'position-plot-outside': '{where}, buiten het beeld',
};
