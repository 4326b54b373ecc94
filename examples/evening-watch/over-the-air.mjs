// Calls made into sound, saved, read and decoded again.
import { readFileSync, writeFileSync } from 'node:fs';
import { createReceiver, modulate, readWav, writeWav } from 'seahail/audio';
import { encodeCall } from 'seahail/burst';

const SAMPLE_RATE = 48_000;

/** Whether nothing of a call is missing. */
export function canBeSent(call) {
  try {
    encodeCall(call);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** Writes the calls as sound and gives what a receiver hears in it. Distress formats stay in the file. */
export function overTheAir(calls, file) {
  const bursts = calls.map((call) =>
    modulate(encodeCall(call), {
      sampleRate: SAMPLE_RATE,
      allowDistress: true,
      leadInSeconds: 0.2,
      tailSeconds: 0.2,
    }),
  );
  const samples = new Float32Array(bursts.reduce((sum, burst) => sum + burst.length, 0));
  let offset = 0;
  for (const burst of bursts) {
    samples.set(burst, offset);
    offset += burst.length;
  }
  writeFileSync(file, writeWav(samples, { sampleRate: SAMPLE_RATE }));
  return heardIn(file);
}

function heardIn(file) {
  const sound = readWav(readFileSync(file));
  if (!sound.ok) throw new Error(sound.issues[0].message);
  const heard = [];
  const receiver = createReceiver({
    sampleRate: sound.value.sampleRate,
    onReception: ({ reception, startSample }) =>
      heard.push({
        seconds: startSample / sound.value.sampleRate,
        call: reception.call,
        verdict: reception.quality.verdict,
      }),
  });
  receiver.push(sound.value.samples);
  receiver.flush();
  return heard;
}
