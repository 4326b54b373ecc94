import type { PositionTexts } from '../../position/internal.ts';
import type { Translation } from '../catalogue.ts';

export const position: Translation<PositionTexts> = {
  'position-minutes': ['Position: {expected} erwartet, {received} erhalten', 'Minuten unter 60'],
  'position-latitude-range': ['Position: {expected} erwartet, {received} erhalten', 'Breite bis 90 Grad'],
  'position-longitude-range': ['Position: {expected} erwartet, {received} erhalten', 'Länge bis 180 Grad'],
  'position-not-text': ['Position: {expected} erwartet, {received} erhalten', 'Text'],
  'position-too-long': ['Position: {expected} erwartet, {count} erhalten', 'höchstens 200 Zeichen'],
  'position-character': [
    'Position: {expected} erwartet, {received} erhalten',
    'Ziffern, Gradzeichen, Vorzeichen und N, S, E oder W',
  ],
  'position-word': ['Position: {expected} erwartet, {received} erhalten', 'N, S, E oder W oder eine Einheit'],
  'position-number': ['Position: {expected} erwartet, {received} erhalten', 'ein Dezimalzeichen je Zahl'],
  'position-form': ['Position: {expected} erwartet', 'Breite und Länge, jede aus einer bis drei Zahlen'],
  'position-labels': [
    'Position: {expected} erwartet',
    'eine Beschriftung für die Breite und eine für die Länge, oder keine',
  ],
  'position-hemisphere': [
    'Position: {expected} erwartet, {received} erhalten',
    'eines von N oder S und eines von E oder W',
  ],
  'position-no-hemisphere': [
    'Position: {expected} erwartet, keines von beiden erhalten',
    'N oder S und E oder W, oder Vorzeichen',
  ],
  'position-sign-and-letter': [
    'Position: {expected} erwartet, beides erhalten',
    'ein Vorzeichen oder ein Buchstabe für die Himmelsrichtung',
  ],
  'position-label-and-letter': [
    'Position: {expected} erwartet, {received} erhalten',
    'Beschriftungen, die zu den Buchstaben passen',
  ],
  'position-letter-o': [
    'Position: {expected} erwartet, {received} erhalten',
    'W oder E statt O, das für die einen West, für die anderen Ost bedeutet',
  ],
  'position-dash': [
    'Position: {expected} erwartet, {received} erhalten',
    'Buchstaben für die Himmelsrichtung, oder ein Leerzeichen vor dem Minus',
  ],
  'position-comma': [
    'Position: {expected} erwartet, {received} erhalten',
    'ein Komma, das nur auf eine Weise gelesen werden kann',
  ],
  'position-packed': [
    'Position: {expected} erwartet, {received} erhalten',
    'die Ziffern nach ISO 6709, oder ein Leerzeichen zwischen den Koordinaten',
  ],
  'position-decimals': [
    'Position: {expected} erwartet, {received} erhalten',
    'Dezimalstellen nur im letzten Teil',
  ],
  'position-seconds': ['Position: {expected} erwartet, {received} erhalten', 'Sekunden unter 60'],
  'position-geo-crs': ['Position: {expected} erwartet, {received} erhalten', 'wgs84'],
  'position-geo-rest': 'Position ohne {received} gelesen',
  'position-digits': ['Position: {expected} erwartet, {received} erhalten', 'zehn Ziffern'],
  'position-quadrant': ['Position: {expected} erwartet, {received} erhalten', 'Quadrant 0, 1, 2 oder 3'],
  'position-fraction-digits': [
    'Position: {expected} erwartet, {received} erhalten',
    'acht Ziffern der Minuten',
  ],
  'position-area-digits': ['Gebiet: {expected} erwartet, {received} erhalten', 'zehn Ziffern'],
  'position-fraction-alone': [
    'Position: {expected} erwartet, {received} erhalten',
    'keine Dezimalstellen nach zehn Neunen, die keine Position angeben',
  ],
  'position-area-past-pole': [
    'Gebiet: {expected} erwartet, {received} erhalten',
    'ein Gebiet, das am Pol endet',
  ],
  'position-area-empty': ['Gebiet: {expected} erwartet, {received} erhalten', 'ein Gebiet mit zwei Seiten'],
  'position-bounds': '{parts}',
  'position-bounds-within': 'höchstens {far} Seemeilen entfernt',
  'position-bounds-at': '{far} Seemeilen entfernt',
  'position-bounds-between': 'zwischen {near} und {far} Seemeilen entfernt',
  'position-bounds-bearing': 'Peilung {from} Grad rechtweisend',
  'position-bounds-sector': 'Peilung {from} bis {to} Grad rechtweisend',
  'position-bounds-no-bearing': 'Peilung unbekannt',
  'position-bounds-no-time': 'Zeit der Position nicht bekannt',
  'position-bounds-ahead': 'Zeit der Position liegt vor der Uhr',
  'position-bounds-new': 'Position weniger als eine Minute alt',
  'position-bounds-minutes': 'Position {minutes} {minutes:fix-minutes} alt',
  'position-bounds-hours': 'Position {hours} h {minutes} min alt',
  'position-bounds-still': 'Bewegung seitdem nicht eingerechnet',
  'fix-minutes.1': 'Minute',
  'fix-minutes.*': 'Minuten',
  'position-plot-caution':
    'Positionen wie in Anrufen gemeldet, sie können alt oder falsch sein. Dies ist kein Radar: nicht zum Vermeiden von Zusammenstößen verwenden',
  'position-plot-title': 'Gemeldete Positionen',
  'position-plot-own-ship': 'eigenes Schiff',
  'position-plot-middle': 'In der Mitte: {name}, {position}',
  'position-plot-rings': 'Norden ist oben. Ringe alle {miles}',
  'position-plot-no-position': 'keine Position',
  'position-plot-station': '{name}: {where}',
  'position-plot-distress': 'In Not: {name}: {where}',
  'position-plot-outside': '{where}, außerhalb des Bildes',
};
