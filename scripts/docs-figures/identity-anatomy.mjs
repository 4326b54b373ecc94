import { identityForms } from 'seahail/identity';
import { box, heading, label, picture } from './svg.mjs';

const CELL = 30;
const HEIGHT = 28;
const ROW = 40;
const TOP = 52;

/** How the digits of a form are drawn: what makes it the form, whose it is, and the rest. */
const looks = {
  fixed: ['what kind it is', { tint: 0.2 }],
  country: ['MID: who issued it', { tint: 0, hatch: '/' }],
  maker: ['its maker', { tint: 0, hatch: '\\' }],
  own: ['one of its kind', { tint: 0 }],
};

/** Every form of an identity, a cell a digit. */
export function identityAnatomy({ id, title }) {
  const lines = [heading(title)];
  identityForms.forEach(({ pattern, name }, row) => {
    const y = TOP + row * ROW;
    const signs = [...pattern.replace('MID', 'ccc')];
    signs.forEach((sign, index) => {
      const look = looks[roleOf(sign, pattern, index)][1];
      const digit = sign === 'c' ? 'MID'[index - pattern.indexOf('MID')] : sign.toUpperCase();
      lines.push(
        box(index * CELL + 1, y, CELL - 2, HEIGHT, look),
        label(index * CELL + CELL / 2, y + 19, /\d/.test(digit) || sign === 'c' ? digit : '', {
          anchor: 'middle',
          size: 14,
          halo: look.hatch !== undefined,
        }),
      );
    });
    lines.push(label(9 * CELL + 16, y + 19, name));
  });
  const legendTop = TOP + identityForms.length * ROW + 10;
  Object.values(looks).forEach(([name, look], index) => {
    const x = 1 + index * 150;
    lines.push(box(x, legendTop, 24, 16, look), label(x + 32, legendTop + 13, name));
  });
  const description = identityForms.map(({ pattern, name }) => `${pattern}: ${name}.`).join(' ');
  return picture({ id, width: 620, height: legendTop + 24, title, description }, lines);
}

function roleOf(sign, pattern, index) {
  if (sign === 'c') return 'country';
  if (/\d/.test(sign)) return 'fixed';
  // 970, 972 and 974 are followed by two digits of the maker: ITU-R M.585-10 Annex 2.
  return /^97[024]/.test(pattern) && index < 5 ? 'maker' : 'own';
}
