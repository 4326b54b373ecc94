import { describe, expect, it } from 'vitest';
import {
  type CallFields,
  composeDistressAlert,
  composeDistressRelay,
  composeTestCall,
  decodeFields,
  encodeFields,
} from '../../src/call/index.ts';
import { readSentences, writeSentences } from '../../src/sentence/index.ts';
import { assertStrangeCalls } from './strange-calls.ts';

// IEC 61162-1, DSC sentence, as restated in equipment papers: a code is the last two digits of its symbol, so that
// 0 to 27, which ITU-R M.493 gives no meaning in these fields, have none: theirs are taken by 100 to 127.
const fields = encodeFields(composeTestCall({ from: '232999871', to: '002329990' }));
const strange = (change: Partial<CallFields>) => decodeFields({ ...fields, ...change }).call;

describe('a symbol without a code', () => {
  it.each([
    ['format', 12, 1],
    ['category', 12, 3],
    ['telecommand1', 10, 4],
    ['telecommand1', 12, 4],
    ['telecommand2', 0, 5],
  ] as const)('%s %i leaves field %i empty, with a notice', (field, symbol, place) => {
    const { sentences, notices } = writeSentences(strange({ [field]: symbol }), { direction: 'received' });
    expect(sentences[0]?.split(',')[place]).toBe('');
    expect(notices[0]).toMatchObject({
      code: 'sentence-content-lost',
      params: { count: 1 },
      received: String(symbol).padStart(2, '0'),
    });
  });

  it('in the nature of an alert does not become another nature', () => {
    const alert = strange({ format: 112, nature: 3, category: null });
    const { sentences, notices } = writeSentences(alert, { direction: 'received' });
    expect(notices.map(({ code }) => code)).toContain('sentence-content-lost');
    expect(readSentences(sentences[0] ?? '')).toMatchObject([
      { call: { kind: 'distress-alert', nature: null } },
    ]);
  });

  it('is refused in a call to be sent', () => {
    for (const change of [{ format: 12 }, { telecommand1: 10 }, { category: 12 }, { end: 100 }]) {
      expect(() => writeSentences(strange(change), { direction: 'commanded' })).toThrow(/writeSentences: /);
    }
  });

  it('in an expansion leaves its data set out: an empty one would say that there is no data', () => {
    const call = strange({ expansion: [{ specifier: 102, symbols: [126, 4] }] });
    const { sentences, notices } = writeSentences(call, { direction: 'received' });
    expect(sentences).toEqual(writeSentences(strange({}), { direction: 'received' }).sentences);
    expect(notices).toMatchObject([
      { code: 'sentence-expansion-lost', params: { specifier: 102, count: 2 } },
    ]);
  });
});

describe('strange calls through sentences', () => {
  it('change no kind without a notice, and become no distress call', () => {
    const { written, refused, changed } = assertStrangeCalls(1500, 20261128);
    const calls = written + refused;
    expect(written / calls).toBeGreaterThan(0.4);
    expect(refused / calls).toBeGreaterThan(0.2);
    expect(changed).toBeGreaterThanOrEqual(Math.floor(calls / 300));
  });
});

// 47 CFR 80.335 and Radio Regulations No. 32.10A on false alerts, from memory: nothing sends one unsolicited.
describe('a commanded distress call', () => {
  const alert = composeDistressAlert({ from: '232999218', nature: 'sinking' });
  const relay = composeDistressRelay({
    about: alert,
    from: '232999871',
    to: '002329990',
  });

  it.each([
    ['an alert', alert],
    ['a relay', relay],
    ['a call of the distress category', strange({ category: 112 })],
    ['a call that names a nature of distress', strange({ nature: 105 })],
  ])('%s is refused without allowDistress', (_, call) => {
    expect(() => writeSentences(call, { direction: 'commanded' })).toThrow(/allowDistress: true/);
    for (const allowDistress of [false, undefined, 'yes', 1]) {
      const options = { direction: 'commanded', allowDistress } as never;
      expect(() => writeSentences(call, options)).toThrow(RangeError);
    }
    expect(writeSentences(call, { direction: 'commanded', allowDistress: true }).sentences).toHaveLength(1);
    expect(writeSentences(call, { direction: 'received' }).sentences).toHaveLength(1);
  });
});
