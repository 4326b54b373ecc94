import { describe, expect, it } from 'vitest';
import flow from '../../shared/station/alert-flow.json' with { type: 'json' };
import { composeDistressAcknowledgement, composeDistressAlert } from '../../src/call/index.ts';
import { adviseOnDistress } from '../../src/station/index.ts';
import { alertFlow, type Box, type Situation } from '../oracle/station-alert-flow.ts';
import { coast, own, troubled } from './happenings.ts';
import { effectsOf, Radio } from './radio.ts';

const MINUTE = 60_000;
const alert = composeDistressAlert({ from: troubled, nature: 'flooding' });

/** A person who answers what the station asks, truthfully. */
function play(situation: Situation): readonly Box[] {
  const boxes: Box[] = [];
  const radio = new Radio({ mmsi: own });
  radio.give({ kind: 'received', call: alert, verdict: 'clean' });
  if (radio.phases[0] === 'heard-distress: listening') boxes.push('listen on 16 for 5 minutes');
  radio.pass(MINUTE);
  if (situation.acknowledged) {
    radio.give({
      kind: 'received',
      call: composeDistressAcknowledgement({ from: coast, about: alert }),
      verdict: 'clean',
    });
  }
  radio.pass(3 * MINUTE);
  if (situation.alertContinues) radio.give({ kind: 'received', call: alert, verdict: 'clean' });
  radio.pass(MINUTE);
  for (let question = 0; question < 5; question++) {
    const advice = adviseOnDistress(radio.state, 1);
    if (advice === null) break;
    if (advice.now.some(({ code }) => code === 'station-inform-coast'))
      boxes.push('inform the coast station');
    const answers = advice.question?.answers ?? [];
    if (answers.includes('no-traffic'))
      radio.give({ kind: situation.traffic ? 'traffic' : 'no-traffic', dialogue: 1 });
    else if (answers.includes('stand-by'))
      radio.give({ kind: situation.ableToAssist ? 'assist' : 'stand-by', dialogue: 1 });
    else radio.give({ kind: 'dismiss', dialogue: 1 });
  }
  if (effectsOf(radio.effects, 'speak').some((effect) => effect.situation === 'received-mayday')) {
    boxes.push('acknowledge by voice');
  }
  if (radio.phases.length === 0) boxes.push('log and reset');
  return boxes;
}

describe('the flow for an alert heard on VHF: MSC.1/Circ.1657', () => {
  it.each(flow.situations)('$situation', ({ situation, boxes }) => {
    expect(alertFlow(situation)).toEqual(boxes);
    expect(play(situation)).toEqual(boxes);
  });

  it('has every situation', () => {
    expect(new Set(flow.situations.map(({ situation }) => JSON.stringify(situation))).size).toBe(16);
  });
});
