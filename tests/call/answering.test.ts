import { describe, expect, it } from 'vitest';
import {
  composeAreaCall,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressRelayAcknowledgement,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePollingAcknowledgement,
  composePollingCall,
  composePositionReply,
  composePositionRequest,
  composeTestAcknowledgement,
  composeTestCall,
  composeUnableToComply,
} from '../../src/call/index.ts';

// All stations are the invented ones of the demo.
const from = '232999871';
const to = '232999142';
const bounty = '232999218';
const coast = '002329990';
const hail = composeIndividualCall({ from, to, channel: '72' });
const request = composePositionRequest({ from, to });
const test = composeTestCall({ from, to: coast });
const polling = composePollingCall({ from, to });

describe('an answer', () => {
  it('keeps the frequencies that were proposed, unless it names a channel', () => {
    const frequencies = { receive: '021820', transmit: '021820' };
    const call = { ...hail, channel: null, frequencies };
    expect(composeIndividualAcknowledgement({ call })).toEqual({
      kind: 'individual-acknowledgement',
      to: { kind: 'station', mmsi: from },
      from: to,
      category: 'routine',
      firstTelecommand: 'telephony-simplex',
      secondTelecommand: null,
      channel: null,
      frequencies,
    });
    const elsewhere = composeIndividualAcknowledgement({ call, channel: '6' });
    expect(elsewhere.channel).toBe('06');
    expect(elsewhere).not.toHaveProperty('frequencies');
    expect(Object.keys(composeIndividualAcknowledgement({ call: hail }))).not.toContain('frequencies');
  });

  it('keeps the category that was received', () => {
    expect(composeIndividualAcknowledgement({ call: { ...hail, category: 'urgency' } }).category).toBe(
      'urgency',
    );
    expect(composeUnableToComply({ call: { ...request, category: 'routine' } }).category).toBe('routine');
    expect(composePositionReply({ call: { ...request, category: 'routine' } }).category).toBe('routine');
    expect(composeTestAcknowledgement({ call: { ...test, category: 'routine' } }).category).toBe('routine');
    expect(composePollingAcknowledgement({ call: { ...polling, category: 'safety' } }).category).toBe(
      'safety',
    );
  });

  // The usual categories of ITU-R M.493-16 tables A1-4.7 and A1-4.9, from memory.
  it('has the usual category where none was read', () => {
    const category = null;
    expect(composeIndividualAcknowledgement({ call: { ...hail, category } }).category).toBe('routine');
    expect(composeUnableToComply({ call: { ...hail, category } }).category).toBe('routine');
    expect(composeUnableToComply({ call: { ...request, category } }).category).toBe('safety');
    expect(composePositionReply({ call: { ...request, category } }).category).toBe('safety');
    expect(composeTestAcknowledgement({ call: { ...test, category } }).category).toBe('safety');
    expect(composePollingAcknowledgement({ call: { ...polling, category } }).category).toBe('routine');
  });
});

describe('the acknowledgement of a relay', () => {
  const alert = composeDistressAlert({ from: bounty });
  const about = composeDistressRelay({ from, to: coast, about: alert });

  it('goes to the sender of a relay to one station, to all ships after a relay to many', () => {
    const answer = (relay: typeof about) =>
      composeDistressRelayAcknowledgement({ from: coast, about: relay }).to;
    expect(answer(about)).toEqual({ kind: 'station', mmsi: from });
    expect(answer(composeDistressRelay({ from, about: alert }))).toEqual({ kind: 'all-ships' });
    expect(answer({ ...about, from: null })).toEqual({ kind: 'all-ships' });
  });

  it('goes to all ships when told so, or when it is about no relay', () => {
    const all = { kind: 'all-ships' } as const;
    expect(composeDistressRelayAcknowledgement({ from: coast, to: all, about }).to).toEqual(all);
    expect(composeDistressRelayAcknowledgement({ from: coast, distressed: bounty })).toMatchObject({
      to: all,
      distressed: bounty,
    });
  });

  it('may be about a vessel that nobody knows', () => {
    const unknown = { ...about, distressed: null };
    expect(composeDistressRelayAcknowledgement({ from: coast, about: unknown }).distressed).toBeNull();
    expect(composeDistressRelay({ from: coast, about: alert, distressed: null }).distressed).toBeNull();
  });

  it('takes over what was told, unless told otherwise', () => {
    const told = composeDistressAlert({
      from: bounty,
      nature: 'sinking',
      time: { hour: 14, minute: 32 },
      subsequent: 'data',
    });
    expect(composeDistressRelay({ from: coast, about: told })).toMatchObject({
      nature: 'sinking',
      position: null,
      time: { hour: 14, minute: 32 },
      subsequent: 'data',
    });
    const other = { nature: 'fire-explosion', time: null, subsequent: 'telephony-duplex' } as const;
    expect(composeDistressRelay({ from: coast, about: told, ...other })).toMatchObject(other);
  });
});

describe('a call to ask', () => {
  it('asks for no decimals unless told to, and for them beside other data', () => {
    expect(request).not.toHaveProperty('expansion');
    expect(composePositionRequest({ from, to, finer: false })).not.toHaveProperty('expansion.requested');
    expect(composePositionRequest({ from, to, finer: true, expansion: { speed: 6 } }).expansion).toEqual({
      speed: 6,
      requested: [100],
    });
  });

  it('is a safety call by the book, routine for sets of an older kind', () => {
    expect(request.category).toBe('safety');
    expect(composePositionRequest({ from, to, category: 'routine' }).category).toBe('routine');
  });

  // The alert of a man-overboard device can be acknowledged to the device alone (ITU-R M.493-16, from memory).
  it('reaches a man-overboard device, and no other device of AIS', () => {
    expect(composeTestCall({ from, to: '972329901' }).to.mmsi).toBe('972329901');
    for (const device of ['970329901', '974329901', '992321234'])
      expect(() => composeTestCall({ from, to: device })).toThrow(
        `to: expected the identity of one station, got ${device}`,
      );
  });

  it('to an area may be urgent', () => {
    const area = {
      kind: 'geographic-area',
      north: { hemisphere: 'N', degrees: 57 },
      west: { hemisphere: 'W', degrees: 7 },
      southward: 2,
      eastward: 3,
    } as const;
    expect(composeAreaCall({ from: coast, area, category: 'urgency' }).category).toBe('urgency');
  });
});
