/**
 * Paper and ink by day, in print, and at night. Hatching, dashes and numbers carry the meaning; colour only helps.
 * Each colour is written twice, for programs that draw SVG without knowing variables.
 */
const DAY = { paper: '#fdfbf5', ink: '#211d19', soft: '#655c51', faint: '#b9ae9c', mark: '#8a1a4b' } as const;
const NIGHT = {
  paper: '#181614',
  ink: '#ebe4d7',
  soft: '#b5ab9b',
  faint: '#857b6e',
  mark: '#f2a3c2',
} as const;
const PRINT = { paper: '#fff', ink: '#000', soft: '#333', faint: '#888', mark: '#000' } as const;

type Colour = keyof typeof DAY;

/** The style sheet of one picture: every rule holds only inside the element with this id. */
export function plotStyle(id: string): string {
  const fill = (colour: Colour) => `fill:${DAY[colour]};fill:var(--${colour});`;
  const stroke = (colour: Colour) => `stroke:${DAY[colour]};stroke:var(--${colour});`;
  const rules: readonly (readonly [string, string])[] = [
    ['text', `font-family:Charter,Georgia,"Liberation Serif",serif;${fill('ink')}`],
    ['.halo', `paint-order:stroke;${stroke('paper')}stroke-width:3px;stroke-linejoin:round`],
    ['.paper', fill('paper')],
    ['.soft', fill('soft')],
    ['.ring', `fill:none;${stroke('faint')}stroke-width:1.6;stroke-linecap:round;stroke-dasharray:0 7`],
    ['.tick', stroke('soft')],
    ['.rule', `fill:none;${stroke('ink')}stroke-width:1.4`],
    ['.solid', fill('ink')],
    ['.bearing', stroke('ink')],
    ['.sector', `fill:none;${stroke('soft')}stroke-dasharray:5 3`],
    ['.may', `opacity:.22;${fill('mark')}${stroke('mark')}stroke-linejoin:round`],
    ['.box', `${stroke('mark')}stroke-width:1.4`],
    ['.hatch', `${stroke('mark')}stroke-width:1.2`],
    ['.alarm', 'stroke-width:3.4'],
    ['.tag', `${fill('paper')}${stroke('ink')}`],
    ['.urgent .tag', fill('ink')],
    ['.urgent text', fill('paper')],
  ];
  return [
    `#${id}{${variables(DAY)}}`,
    ...rules.map(([selector, body]) => `#${id} ${selector}{${body}}`),
    `@media (prefers-color-scheme:dark){#${id}{${variables(NIGHT)}}}`,
    `@media print{#${id}{${variables(PRINT)}}}`,
  ].join('');
}

function variables(colours: Readonly<Record<Colour, string>>): string {
  return Object.entries(colours)
    .map(([name, value]) => `--${name}:${value}`)
    .join(';');
}
