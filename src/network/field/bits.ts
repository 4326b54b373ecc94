/** Two to the power of 0 to 32. */
export const POWERS: readonly number[] = /* @__PURE__ */ Array.from({ length: 33 }, (_, power) => 2 ** power);

/**
 * Bits in the order of IEC 61162-3: least significant bit and byte first. Fields are up to 32 bits wide; those
 * of 64 are two halves. Reading past the end gives `null` and is remembered.
 */
export class BitReader {
  /** Whether a field reached past the end. */
  short: boolean = false;
  readonly #bytes: Uint8Array;
  #at: number = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  /** Next `bits` (1 to 32) as an unsigned number, or `null` past the end. */
  read(bits: number): number | null {
    const from = this.#at;
    this.#at += bits;
    if (this.#at > this.#bytes.length * 8) {
      this.short = true;
      return null;
    }
    let value = 0;
    if (((from | bits) & 7) === 0) {
      // Whole bytes, which most fields are.
      for (let place = (from + bits) >>> 3; place-- > from >>> 3; )
        value = value * 256 + (this.#bytes[place] as number);
      return value;
    }
    for (let done = 0; done < bits; ) {
      const bit = (from + done) & 7;
      const take = Math.min(8 - bit, bits - done);
      const part = ((this.#bytes[(from + done) >>> 3] as number) >>> bit) & ((1 << take) - 1);
      // Not a shift: the highest of 32 bits would make it negative.
      value += part * (POWERS[done] as number);
      done += take;
    }
    return value;
  }

  /** Next `count` whole bytes, fewer at the end, as text of one character a byte. */
  text(count: number): string {
    const from = this.#at >>> 3;
    this.#at += count * 8;
    if (this.#at > this.#bytes.length * 8) this.short = true;
    let text = '';
    for (let place = from; place < Math.min(from + count, this.#bytes.length); place++)
      text += String.fromCharCode(this.#bytes[place] as number);
    return text;
  }

  /** Whole bytes not yet read. */
  get left(): number {
    return Math.max(0, this.#bytes.length - (this.#at >>> 3));
  }
}

/** The counterpart of {@link BitReader}. */
export class BitWriter {
  readonly #bytes: number[] = [];
  #at: number = 0;

  write(value: number, bits: number): void {
    for (let done = 0; done < bits; ) {
      const place = this.#at >>> 3;
      const bit = this.#at & 7;
      const take = Math.min(8 - bit, bits - done);
      const part = Math.floor(value / 2 ** done) % 2 ** take;
      this.#bytes[place] = (this.#bytes[place] ?? 0) | (part << bit);
      this.#at += take;
      done += take;
    }
  }

  put(bytes: Iterable<number>): void {
    for (const byte of bytes) this.write(byte, 8);
  }

  bytes(): Uint8Array {
    return Uint8Array.from(this.#bytes);
  }
}
