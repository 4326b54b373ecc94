/** One content line of a vCard: name, parameters as they stood, value as it stood. */
export interface ContentLine {
  /** Physical line it starts on, from 1. */
  readonly line: number;
  /** Upper-case name without a group in front; empty where the line is none. */
  readonly name: string;
  /** Parameters with their leading semicolon, or empty. */
  readonly parameters: string;
  readonly value: string;
}

/** Unfold and take apart the content lines of RFC 6350 §3.3, with line ends of any kind. */
export function readContentLines(text: string): readonly ContentLine[] {
  const logical: { line: number; parts: string[] }[] = [];
  for (const [index, physical] of text
    .replace(/^\ufeff/, '')
    .split(/\r\n|\r|\n/)
    .entries()) {
    const last = logical.at(-1);
    if (/^[ \t]/.test(physical) && last !== undefined) last.parts.push(physical.slice(1));
    else if (physical !== '') logical.push({ line: index + 1, parts: [physical] });
  }
  return logical.map(({ line, parts }) => {
    const whole = parts.join('');
    const colon = colonOf(whole);
    const head = whole.slice(0, Math.max(colon, 0));
    const [, name = ''] = /^(?:[A-Za-z\d-]+\.)?([A-Za-z\d-]+)(?:;|$)/.exec(head) ?? [];
    const parameters = name === '' || !head.includes(';') ? '' : head.slice(head.indexOf(';'));
    return {
      line,
      name: name.toUpperCase(),
      parameters,
      value: name === '' ? whole : whole.slice(colon + 1),
    };
  });
}

/** Index of the first colon outside the quotes of parameters, or -1. */
function colonOf(text: string): number {
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    if (text[at] === '"') quoted = !quoted;
    else if (!quoted && text[at] === ':') return at;
  }
  return -1;
}

/** Write one content line, folded after at most 75 octets without cutting a character, RFC 6350 §3.2. */
export function writeContentLine(name: string, value: string): string {
  let out = '';
  let octets = 0;
  for (const character of `${name}:${value}`) {
    const size = octetsOf(character.codePointAt(0) as number);
    if (octets + size > 75) {
      out += '\r\n ';
      octets = 1;
    }
    out += character;
    octets += size;
  }
  return `${out}\r\n`;
}

function octetsOf(point: number): number {
  return point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
}

/** TEXT value, RFC 6350 §3.4. No other control character is left to end a line, or a card. */
export function escapeText(text: string): string {
  return text
    .replace(/[\\,;]/g, '\\$&')
    .replace(/\r\n?|\n/g, '\\n')
    .replace(/(?!\t)\p{Cc}/gu, ' ');
}

/** The text of a TEXT value. */
export function unescapeText(value: string): string {
  return value.replace(/\\(.)/gsu, (_, escaped: string) =>
    escaped === 'n' || escaped === 'N' ? '\n' : escaped,
  );
}

/** A value before and after its first unescaped semicolon, both still escaped. */
export function firstComponent(value: string): readonly [string, string] {
  let at = 0;
  while (at < value.length && value[at] !== ';') at += value[at] === '\\' ? 2 : 1;
  return [value.slice(0, at), value.slice(at + 1)];
}
