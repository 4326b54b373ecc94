// The live example of the front page: who a number is, and the box that a reported minute leaves.
import { identityForms, parseIdentity } from 'seahail/identity';
import { administrationName, administrationOf } from 'seahail/identity/administrations';
import { boxOf, formatReportedPosition, parsePosition, toReportedPosition } from 'seahail/position';

/** The first question: a sentence of an identity, or what is wrong with the text. */
export function whoIs(text: string): string {
  const read = parseIdentity(text);
  if (!read.ok) {
    const [{ message, suggestion }] = read.issues;
    return `${message}.${suggestion === undefined ? '' : ` Perhaps ${suggestion}?`}`;
  }
  const { kind, mmsi } = read.value;
  const name = identityForms.find((form) => form.kind === kind)?.name ?? kind;
  const entry = 'mid' in read.value ? administrationOf(read.value.mid) : undefined;
  return `${mmsi}: ${name}${entry === undefined ? '' : `, number issued by ${administrationName(entry)}`}.`;
}

/** The second: how large the place is that whole minutes leave, drawn to scale. */
export function minuteBox(text: string): { readonly words: string; readonly svg: string } {
  const read = parsePosition(text);
  if (!read.ok) return { words: `${read.issues[0].message}.`, svg: '' };
  const reported = toReportedPosition(read.value);
  const { south, north, west, east } = boxOf(reported);
  // A minute of latitude is a nautical mile; one of longitude is shorter by the cosine of the latitude.
  const high = (north - south) * 60;
  const wide = (east - west) * 60 * Math.cos((((north + south) / 2) * Math.PI) / 180);
  const [width, height] = [wide * 90, high * 90];
  const svg = [
    `<svg viewBox="0 0 ${(width + 74).toFixed(1)} 126" width="${(width + 74).toFixed(0)}" height="126" aria-hidden="true" fill="currentColor">`,
    `<rect x="2" y="2" width="${width.toFixed(1)}" height="${height.toFixed(1)}" fill="none" stroke="var(--accent)" stroke-width="2"/>`,
    `<text x="${(width + 10).toFixed(1)}" y="${(height / 2 + 6).toFixed(1)}" font-size="15">${high.toFixed(2)} M</text>`,
    `<text x="${(width / 2 + 2).toFixed(1)}" y="${(height + 20).toFixed(1)}" font-size="15" text-anchor="middle">${wide.toFixed(2)} M</text>`,
    '</svg>',
  ].join('');
  return {
    words: `A call says ${formatReportedPosition(reported)}: she is somewhere in a box ${wide.toFixed(2)} by ${high.toFixed(2)} nautical miles.`,
    svg,
  };
}

if (typeof document !== 'undefined') {
  const field = (id: string): HTMLInputElement | null => document.querySelector(`#${id}`);
  const [number, place] = [field('live-number'), field('live-place')];
  const answer = (): void => {
    const [who, where] = [document.querySelector('#live-who'), document.querySelector('#live-where')];
    if (number !== null && who !== null) who.textContent = whoIs(number.value);
    if (place === null || where === null) return;
    const { words, svg } = minuteBox(place.value);
    where.textContent = words;
    // Numbers and fixed words alone: nothing of what was typed.
    where.insertAdjacentHTML('beforeend', svg);
  };
  number?.form?.addEventListener('input', answer);
  number?.form?.addEventListener('submit', (event) => event.preventDefault());
}
