// What is fuzzed: every function that takes data from outside. Each must return, never throw, and what it
// returns must survive a structured clone.
import { createReceiver, readWav } from 'seahail/audio';
import { decodeBits, decodeSoft, decodeStream } from 'seahail/burst';
import { channelsAt, decodeChannel, findChannel, parseDesignator } from 'seahail/channel';
import { unitedStatesPlan } from 'seahail/channel/united-states';
import { createDirectory, findStations, readDirectoryCsv, readVcards } from 'seahail/directory';
import { checkCallSign, decodeCallAddress, parseIdentity } from 'seahail/identity';
import { administrationOf } from 'seahail/identity/administrations';
import { decodeArea, decodePosition, parsePosition } from 'seahail/position';
import * as sentence from 'seahail/sentence';
import { restoreStation } from 'seahail/station';

const bytesOf = (text) => Uint8Array.from(text, (character) => character.charCodeAt(0) & 0xff);
const parsed = (text) => {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
};

/** Named functions from a text (each character below 256 stands for a byte) to whatever they give. */
export const targets = {
  parseIdentity,
  decodeCallAddress,
  checkCallSign,
  administrationOf,
  readDirectoryCsv,
  readVcards,
  findStations: (text) => findStations(createDirectory(), text),
  parseDesignator,
  findChannel: (text) => findChannel(unitedStatesPlan, text),
  channelsAt: (text) => channelsAt(unitedStatesPlan, text),
  decodeChannel: (text) => decodeChannel(text, unitedStatesPlan),
  parsePosition,
  decodePosition: (text) => decodePosition(text.slice(0, 10), text.slice(10)),
  decodeArea,
  parseSentence: (text) => sentence.parseSentence(text),
  readSentences: (text) => sentence.readSentences(text, { own: '232999871', unchecked: true }),
  readSentencesBytes: (text) => sentence.readSentences(bytesOf(text)),
  findFaults: (text) => sentence.findFaults(text, { own: '232999871' }),
  findFaultsBytes: (text) => sentence.findFaults(bytesOf(text)),
  decodeBits: (text) =>
    decodeBits(text.replace(/[^01]/g, (character) => String(character.charCodeAt(0) & 1))),
  decodeStream: (text) => decodeStream([...bytesOf(text)].map((byte) => (byte > 127 ? null : byte))),
  decodeSoft: (text) => decodeSoft(Float32Array.from(bytesOf(text), (byte) => (byte - 128) / 16)),
  readWav: (text) => {
    const result = readWav(bytesOf(text));
    return result.ok ? { ...result, value: { ...result.value } } : result;
  },
  receiver: (text) => {
    const heard = [];
    const receiver = createReceiver({
      sampleRate: 8000,
      onReception: (burst) => heard.push(burst),
      onIssue: (issue) => heard.push(issue),
    });
    const bytes = bytesOf(text);
    receiver.push(new Float32Array(bytes.slice(0, bytes.length - (bytes.length % 4)).buffer));
    receiver.flush();
    return heard;
  },
  restoreStation: (text) => restoreStation(parsed(text)),
};
