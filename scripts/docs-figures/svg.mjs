/** Text made fit for XML. */
export function text(value) {
  return String(value).replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** A number short enough for a file that people read. */
export function n(value) {
  return String(Math.round(value * 100) / 100);
}

/**
 * A picture to be set into a page: it takes letters and colour of the text around it, so that it reads in light and
 * dark, and says in words what it shows. Hatching and dashes carry the meaning; the one accent points something out. No line of it is blank, as a blank line would end the HTML block in Markdown.
 */
export function picture({ id, width, height, title, description }, lines) {
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" id="${id}" viewBox="0 0 ${n(width)} ${n(height)}" style="width:100%;height:auto;min-width:${Math.round(0.85 * width)}px;max-width:${Math.round(1.1 * width)}px" role="img" aria-labelledby="${id}-title ${id}-desc" font-size="13" fill="currentColor" stroke="none">`,
    `<title id="${id}-title">${text(title)}</title>`,
    `<desc id="${id}-desc">${text(description)}</desc>`,
    ...lines,
    '</svg>',
  ].join('\n')}\n`;
}

export function label(
  x,
  y,
  value,
  { anchor = 'start', size = 13, weight = 400, slant = false, halo = false } = {},
) {
  const looks = [
    weight === 400 ? '' : ` font-weight="${weight}"`,
    slant ? ' font-style="italic"' : '',
    halo ? ' stroke="var(--paper)" stroke-width="4" stroke-linejoin="round" paint-order="stroke"' : '',
  ].join('');
  return `<text x="${n(x)}" y="${n(y)}" text-anchor="${anchor}" font-size="${size}"${looks}>${text(value)}</text>`;
}

/** What a figure is called, above it and in the manner of a small heading. */
export function heading(value, { x = 0, y = 22, anchor = 'start' } = {}) {
  return label(x, y, value, { anchor, size: 17, slant: true });
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

/** A box, its inside tinted, and hatched with lines of the given ways: any of `/`, `\\`, `|` and `-`. */
export function box(
  x,
  y,
  width,
  height,
  { colour = 'currentColor', tint = 0.05, radius = 3, stroke = 1.2, dash = '', hatch = '' } = {},
) {
  const frame = `<rect x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}" rx="${radius}" fill="${colour}" fill-opacity="${tint}" stroke="${colour}" stroke-width="${stroke}"${dash === '' ? '' : ` stroke-dasharray="${dash}"`}/>`;
  return frame + [...hatch].map((way) => hatching(way, [x, y, width, height], colour)).join('');
}

/** Lines drawn one by one rather than as a pattern, so that no id is needed. */
function hatching(way, [x, y, width, height], colour) {
  const lines = [];
  const draw = (x1, y1, x2, y2) => lines.push(`M${n(x + x1)} ${n(y + y1)}L${n(x + x2)} ${n(y + y2)}`);
  if (way === '|') for (let at = STEP; at < width; at += STEP) draw(at, 0, at, height);
  if (way === '-') for (let at = STEP; at < height; at += STEP) draw(0, at, width, at);
  if (way === '/' || way === '\\') {
    const turned = (at) => (way === '/' ? at : width - at);
    for (let at = STEP; at < width + height; at += 1.4 * STEP)
      draw(
        turned(Math.max(0, at - height)),
        Math.min(at, height),
        turned(Math.min(at, width)),
        Math.max(0, at - width),
      );
  }
  return `<path d="${lines.join('')}" fill="none" stroke="${colour}" stroke-width="0.8" opacity="0.55"/>`;
}

const STEP = 5;

/** Points something out; one thing in a figure. */
export const accent = 'var(--accent)';
