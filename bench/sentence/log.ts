import { checksumOf } from '../../src/sentence/frame/checksum.ts';

/** A repeatable sequence of numbers from 0 up to but not including 1 (xorshift, 32 bits). */
export function randomFrom(seed: number): () => number {
  let state = seed | 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

/** What a log is made of. */
export type Mix = 'pairs' | 'watch';

/**
 * Invented sentences. `pairs`: position replies with their expansions and nothing else, the dearest there is.
 * `watch`: what a plotter's port carries, own position and AIS with a call now and then.
 */
export function inventedLog(sentences: number, mix: Mix, seed = 1): string {
  const random = randomFrom(seed);
  const digits = (count: number): string =>
    Array.from({ length: count }, () => Math.floor(random() * 10)).join('');
  const two = (most: number): string => String(Math.floor(random() * most)).padStart(2, '0');
  const line = (body: string, start = '$'): string => `${start}${body}*${checksumOf(body)}\r\n`;
  let out = '';
  for (let count = 0; count < sentences; ) {
    if (mix === 'pairs' || random() < 0.02) {
      const station = `23${digits(7)}0`;
      const place = `1${two(60)}${two(60)}0${two(60)}${two(60)}`;
      out += line(`CDDSC,20,${station},08,21,26,${place},${two(24)}${two(60)},,,B,E`);
      out += line(`CDDSE,1,1,A,${station},00,${digits(8)}`);
      count += 2;
    } else {
      const minute = `${two(60)}.${digits(4)}`;
      const clock = `${two(24)}${two(60)}${two(60)}.00`;
      const kind = random();
      if (kind < 0.3) out += line(`GPRMC,${clock},A,56${minute},N,006${minute},W,5.2,184.0,010626,1.5,W,A`);
      else if (kind < 0.5) out += line(`GPGGA,${clock},56${minute},N,006${minute},W,1,09,0.9,3.0,M,50.1,M,,`);
      else if (kind < 0.6) out += line(`GPVTG,184.0,T,185.5,M,5.2,N,9.6,K,A`);
      else out += line(`AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vH00${digits(2)},0`, '!');
      count += 1;
    }
  }
  return out;
}
