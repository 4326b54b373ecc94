import { modulate } from 'seahail/audio';
import { encodeCall } from 'seahail/burst';
import {
  composeIndividualCall,
  composePositionReply,
  composePositionRequest,
  composeTestCall,
} from 'seahail/call';
import { toReportedPosition } from 'seahail/position';
import { withNoise } from '../frame/samples.ts';

/** Four invented calls, one after another: the third far away, the last with a crash of noise in the middle of it. */
export function inventedMinute(sampleRate: number): Float32Array<ArrayBuffer> {
  const [merrow, tern] = ['232999871', '232999142'];
  const request = composePositionRequest({ from: merrow, to: tern });
  const place = toReportedPosition({ latitude: 56.33883, longitude: -6.502 }, { enhanced: true });
  const calls = [
    { call: composeIndividualCall({ from: merrow, to: tern, channel: '72' }), at: 1, level: 1 },
    {
      call: composePositionReply({ call: request, position: place, time: { hour: 14, minute: 32 } }),
      at: 4,
      level: 0.4,
    },
    { call: composeTestCall({ from: '232999563', to: '002329990' }), at: 8, level: 0.11 },
    { call: composeTestCall({ from: '232999142', to: '002329990' }), at: 11, level: 0.4 },
  ];
  const sound = new Float32Array(13 * sampleRate);
  for (const { call, at, level } of calls) {
    modulate(encodeCall(call), { sampleRate }).forEach((sample, index) => {
      sound[at * sampleRate + index] = sample * level;
    });
  }
  crash(sound, 11.24 * sampleRate, 0.055 * sampleRate);
  return withNoise(sound, sampleRate, 23);
}

/** Another transmission over this one: its tone drowns six or seven words, and with them both copies of some. */
function crash(sound: Float32Array, from: number, length: number): void {
  for (let n = 0; n < length; n++) sound[from + n] = (n % 30 < 15 ? 1 : -1) * 0.9;
}
