/** One piece of a stream that was ended by CR, LF or both, or cut for being endless. */
export interface Line {
  readonly text: string;
  /** Counted from 1, empty lines included. */
  readonly number: number;
  /** Characters before the line: as many as bytes, unless a byte-order mark says how the text is encoded. */
  readonly offset: number;
  /** Characters thrown away because no line end and no start of a sentence came in time. */
  readonly dropped: number;
}

/** Cuts a stream into lines without ever holding more than one of bounded length. */
export interface LineSplitter {
  push(text: string, onLine: (line: Line) => void): void;
  flush(onLine: (line: Line) => void): void;
  /** Where the stream has come to. */
  place(): Pick<Line, 'number' | 'offset'>;
}

/** Longest line held: a dozen sentences, or one of 82 characters after a TAG block and a time stamp many times over. */
export const MOST_LINE_CHARACTERS = 1024;
const LINE_FEED = 0x0a;
const CARRIAGE_RETURN = 0x0d;

/**
 * A splitter at its beginning. Where the chunks were cut makes no difference to the lines.
 *
 * A line that grows past the limit is cut before the last start of a sentence in it; without one it
 * is dropped up to the next start or line end, and counted.
 */
export function createLineSplitter(): LineSplitter {
  let held = '';
  let dropped = 0;
  let discarding = false;
  let afterCarriageReturn = false;
  let number = 1;
  /** Of the first character in `held`. */
  let offset = 0;

  function feed(piece: string, onLine: (line: Line) => void): void {
    let rest = piece;
    while (rest !== '') {
      if (discarding) {
        const opening = rest.search(/[$!\\]/);
        const skipped = opening < 0 ? rest.length : opening;
        dropped += skipped;
        offset += skipped;
        rest = rest.slice(skipped);
        if (opening < 0) return;
        endDiscarding(onLine);
      }
      const room = MOST_LINE_CHARACTERS - held.length;
      held += rest.slice(0, room);
      rest = rest.slice(room);
      if (rest !== '') overflow(onLine);
    }
  }

  function overflow(onLine: (line: Line) => void): void {
    const cut = lastOpening(held);
    if (cut > 0) {
      onLine({ text: held.slice(0, cut), number, offset, dropped: 0 });
      held = held.slice(cut);
      offset += cut;
    } else {
      discarding = true;
      dropped = held.length;
      offset += held.length;
      held = '';
    }
  }

  function endDiscarding(onLine: (line: Line) => void): void {
    onLine({ text: '', number, offset: offset - dropped, dropped });
    discarding = false;
    dropped = 0;
  }

  function endLine(onLine: (line: Line) => void): void {
    if (discarding) endDiscarding(onLine);
    else onLine({ text: held, number, offset, dropped: 0 });
    offset += held.length;
    held = '';
  }

  function pushText(text: string, onLine: (line: Line) => void): void {
    let from = 0;
    while (from < text.length) {
      if (afterCarriageReturn) {
        afterCarriageReturn = false;
        if (text.charCodeAt(from) === LINE_FEED) {
          offset += 1;
          from += 1;
          continue;
        }
      }
      const end = lineEnd(text, from);
      if (end < 0) {
        feed(text.slice(from), onLine);
        return;
      }
      feed(text.slice(from, end), onLine);
      endLine(onLine);
      number += 1;
      offset += 1;
      afterCarriageReturn = text.charCodeAt(end) === CARRIAGE_RETURN;
      from = end + 1;
    }
  }

  return {
    push: pushText,
    flush: endLine,
    place: () => ({ number, offset: offset + held.length }),
  };
}

/** Where the next CR or LF is, or -1. One pass: searching for each of them reads on through all that follows. */
export function lineEnd(text: string, from: number): number {
  for (let index = from; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (code === LINE_FEED || code === CARRIAGE_RETURN) return index;
  }
  return -1;
}

/** Where the last sentence in the text begins, its TAG block included; 0 or less when none begins after the first character. */
function lastOpening(text: string): number {
  const start = Math.max(text.lastIndexOf('$'), text.lastIndexOf('!'));
  const tail = text.indexOf('\\', start);
  if (tail >= 0) return tail;
  return text[start - 1] === '\\' ? text.lastIndexOf('\\', start - 2) : start;
}
