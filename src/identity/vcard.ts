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
    const [head = '', name = '', parameters = ''] =
      /^(?:[A-Za-z\d-]+\.)?([A-Za-z\d-]+)((?:;(?:"[^"]*"|[^":])*)?):/.exec(whole) ?? [];
    return { line, name: name.toUpperCase(), parameters, value: whole.slice(head.length) };
  });
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

/** TEXT value, RFC 6350 §3.4. */
export function escapeText(text: string): string {
  return text.replace(/[\\,;]/g, '\\$&').replace(/\n/g, '\\n');
}

/** The text of a TEXT value. */
export function unescapeText(value: string): string {
  return value.replace(/\\(.)/gsu, (_, escaped: string) =>
    escaped === 'n' || escaped === 'N' ? '\n' : escaped,
  );
}

/** The components of a value that unescaped semicolons put apart, still escaped. */
export function components(value: string): readonly string[] {
  return value.match(/(?:^|;)(?:\\.|[^\\;])*/gsu)?.map((part) => part.replace(/^;/, '')) ?? [];
}
