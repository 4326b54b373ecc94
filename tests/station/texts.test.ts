import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composeDistressAlert, composeDistressRelay } from '../../src/call/index.ts';
import { german } from '../../src/locale/de.ts';
import { english } from '../../src/locale/en.ts';
import { french } from '../../src/locale/fr.ts';
import { type Translatable, translate } from '../../src/locale/index.ts';
import { dutch } from '../../src/locale/nl.ts';
import type { CodedText, Issue } from '../../src/result/index.ts';
import { type Effect, type LogEntry, openQuestions, phaseTable } from '../../src/station/index.ts';
import {
  alertAct,
  callToStart,
  coast,
  friend,
  heardCall,
  interval,
  own,
  personAct,
  troubled,
} from './happenings.ts';
import { effectsOf, type Happening, Radio } from './radio.ts';

/** Everything a person reads in an effect. */
function textsOf(effect: Effect): readonly Translatable[] {
  const caution = effect.caution === null ? [] : [effect.caution];
  switch (effect.kind) {
    case 'show':
    case 'ask':
      return [effect, ...caution];
    case 'log':
      return effect.entry.code === undefined ? caution : [effect.entry, ...caution];
    case 'issue':
      return [effect.issue, ...caution];
    case 'advise': {
      const { now, question, waitFor, whoAcknowledges, caution: warned, ...rest } = effect.advice;
      const { voiceAcknowledgement, dscAcknowledgement, relay, relayToMany } = rest;
      const permissions = [voiceAcknowledgement, dscAcknowledgement, relay, relayToMany];
      return [
        ...now,
        ...(question === null ? [] : [question]),
        ...(waitFor === null ? [] : [waitFor]),
        whoAcknowledges,
        warned,
        ...permissions.map((permission) => ({ ...permission, text: permission.why })),
        ...caution,
      ];
    }
    default:
      return caution;
  }
}

const happening: fc.Arbitrary<(latest: number) => Happening> = fc.oneof(
  fc
    .record({ call: heardCall, verdict: fc.constantFrom('clean', 'clean', 'repaired', 'doubtful') })
    .map((heard) => () => ({ kind: 'received', ...heard }) as Happening),
  callToStart.map((call) => () => ({ kind: 'call', call }) as const),
  personAct,
  alertAct.map((act) => () => act),
);

const alert = composeDistressAlert({ from: troubled, nature: 'flooding' });

describe('what a station says', () => {
  it('is made from code and params, whatever happens: English says the same again, the others say it all', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(happening, interval), { minLength: 1, maxLength: 20 }), (happenings) => {
        const radio = new Radio({ mmsi: own, equipment: 'A', logOthers: true, watched: ['13'] });
        for (const [each, gap] of happenings) {
          radio.give(each(radio.latest));
          if (radio.onAir !== null) radio.finish();
          radio.pass(Math.max(gap, 0));
          if (radio.onAir !== null) radio.finish();
        }
        for (const each of radio.effects.flatMap(textsOf)) {
          const said = translate(each, english);
          expect(said).toMatchObject({ lang: 'en', text: each.text ?? each.message });
          expect(said.text).not.toMatch(/undefined|null|\[|\]|\{|\}/);
          for (const other of [german, french, dutch])
            expect(translate(each, other)).toMatchObject({ lang: other.lang });
        }
      }),
    );
  });

  it('holds the call it is about as a text of its own, translated with it', () => {
    const radio = new Radio({ mmsi: own });
    const call = { ...composeDistressRelay({ from: friend, to: { kind: 'all-ships' }, about: alert }) };
    radio.give({ kind: 'received', call, verdict: 'repaired' });
    const entry = radio.log[0] as LogEntry;
    expect(entry).toMatchObject({
      code: 'station-received',
      params: {
        verdict: 'repaired',
        call: {
          code: 'station-brief-place',
          params: {
            kind: 'distress-relay',
            from: friend,
            many: 'all-ships',
            distressed: troubled,
            nature: 'flooding',
            lack: 'position',
          },
        },
      },
    });
    expect(translate(entry, english).text).toBe(entry.text);
    const said = translate(entry, german).text;
    expect(said).toContain(translate(entry.params?.call as CodedText, german).text);
    expect(said).toContain('Weiterleitung');
    expect(said).not.toContain('relay');
  });

  it('has no words for a vessel or station without a number but those of the language', () => {
    const radio = new Radio({ mmsi: own });
    const call = { ...composeDistressRelay({ from: coast, to: { kind: 'all-ships' }, about: alert }) };
    radio.give({ kind: 'received', call: { ...call, distressed: null }, verdict: 'clean' });
    radio.give({ kind: 'stand-by', dialogue: 1 });
    expect(radio.log.at(-1)).toMatchObject({
      code: 'station-not-assisting',
      params: { vessel: { code: 'station-unidentified-vessel', params: {} } },
    });
    expect(translate(radio.log.at(-1) as LogEntry, french).text).toContain('navire non identifié');
  });

  it('wraps why a thing is refused, in any language', () => {
    const radio = new Radio({ mmsi: own, equipment: 'A' });
    radio.give({ kind: 'received', call: alert, verdict: 'clean' });
    const [refused] = effectsOf(radio.give({ kind: 'acknowledge', dialogue: 1 }), 'issue');
    expect(refused?.issue).toMatchObject({
      code: 'station-acknowledgement-not-allowed',
      grade: 'error',
      params: { why: { code: 'station-dsc-wait', params: {} } },
    });
    expect(translate(refused?.issue as Issue, dutch).text).toBe(
      `Bevestiging: ${translate({ code: 'station-dsc-wait', params: {} }, dutch).text}`,
    );
  });

  it('is asked again by openQuestions with the same code and params', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'prepare-alert' });
    radio.give({ kind: 'press-alert' });
    radio.pass(3000);
    radio.finish();
    radio.give({ kind: 'cancel-alert' });
    const [asked] = effectsOf(radio.effects, 'ask').slice(-1);
    expect(openQuestions(radio.state)).toMatchObject([
      { code: 'station-ask-cancel', params: asked?.params, text: asked?.text },
    ]);
  });
});

it('every phase has a meaning of its own procedure', () => {
  for (const { procedure, phase, meaning, params } of phaseTable()) {
    expect(params).toEqual({ phase: `${procedure}.${phase}` });
    expect(meaning).not.toContain(phase.includes('-') ? phase : `${procedure}.`);
  }
});
