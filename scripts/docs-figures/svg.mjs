/** Text made fit for XML. */
export function text(value) {
  return String(value).replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** A number short enough for a file that people read. */
export function n(value) {
  return String(Math.round(value * 100) / 100);
}

/**
 * A picture to be set into a page: it takes the colour of the text around it, so that it reads in light and dark,
 * and says in words what it shows. No line of it is blank, as a blank line would end the HTML block in Markdown.
 */
export function picture({ id, width, height, title, description }, lines) {
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" id="${id}" viewBox="0 0 ${n(width)} ${n(height)}" style="width:100%;height:auto;min-width:${Math.round(0.85 * width)}px;max-width:${Math.round(1.1 * width)}px" role="img" aria-labelledby="${id}-title ${id}-desc" font-family="system-ui, sans-serif" font-size="13" fill="currentColor" stroke="none">`,
    `<title id="${id}-title">${text(title)}</title>`,
    `<desc id="${id}-desc">${text(description)}</desc>`,
    ...lines,
    '</svg>',
  ].join('\n')}\n`;
}

export function label(x, y, value, { anchor = 'start', size = 13, weight = 400, soft = false } = {}) {
  return `<text x="${n(x)}" y="${n(y)}" text-anchor="${anchor}" font-size="${size}"${weight === 400 ? '' : ` font-weight="${weight}"`}${soft ? ' opacity="0.75"' : ''}>${text(value)}</text>`;
}

export function line(
  points,
  { width = 1.2, dash = '', colour = 'currentColor', arrow = false, opacity = 1 } = {},
) {
  const path = `<path d="M${points.map(([x, y]) => `${n(x)} ${n(y)}`).join('L')}" fill="none" stroke="${colour}" stroke-width="${width}"${dash === '' ? '' : ` stroke-dasharray="${dash}"`}${opacity === 1 ? '' : ` opacity="${opacity}"`}/>`;
  return arrow ? path + head(points.at(-2), points.at(-1), colour) : path;
}

/** The head of an arrow, drawn rather than marked, so that no id is needed. */
function head([fromX, fromY], [x, y], colour) {
  const angle = Math.atan2(y - fromY, x - fromX);
  const side = (turn) => `${n(x + 8 * Math.cos(angle + turn))} ${n(y + 8 * Math.sin(angle + turn))}`;
  return `<path d="M${n(x)} ${n(y)}L${side(2.7)}L${side(-2.7)}Z" fill="${colour}"/>`;
}

export function box(
  x,
  y,
  width,
  height,
  { colour = 'currentColor', tint = 0.06, radius = 4, stroke = 1.2 } = {},
) {
  return `<rect x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}" rx="${radius}" fill="${colour}" fill-opacity="${tint}" stroke="${colour}" stroke-width="${stroke}"/>`;
}

/** Colours of middling lightness, which stand out on white and on near-black. */
export const colours = {
  sea: '#2a86b8',
  land: '#a8762a',
  alarm: '#d1495b',
  leaf: '#4c956c',
  violet: '#8a63b8',
};
