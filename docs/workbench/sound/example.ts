import { modulate } from 'seahail/audio';
import { encodeCall } from 'seahail/burst';
import {
  composeIndividualCall,
  composePositionReply,
  composePositionRequest,
  composeTestCall,
} from 'seahail/call';
import { reportPosition } from 'seahail/position';
import { withNoise } from '../frame/samples.ts';

/** Three invented calls, one after another, the last of them far away. */
export function inventedMinute(sampleRate: number): Float32Array<ArrayBuffer> {
  const [merrow, tern] = ['232999871', '232999142'];
  const request = composePositionRequest({ from: merrow, to: tern });
  const place = reportPosition({ latitude: 56.33883, longitude: -6.502 }, { enhanced: true });
  const calls = [
    { call: composeIndividualCall({ from: merrow, to: tern, channel: '72' }), at: 1, level: 1 },
    {
      call: composePositionReply({ call: request, position: place, time: { hour: 14, minute: 32 } }),
      at: 4,
      level: 0.4,
    },
    { call: composeTestCall({ from: '232999563', to: '002329990' }), at: 8, level: 0.11 },
  ];
  const sound = new Float32Array(10 * sampleRate);
  for (const { call, at, level } of calls) {
    modulate(encodeCall(call), { sampleRate }).forEach((sample, index) => {
      sound[at * sampleRate + index] = sample * level;
    });
  }
  return withNoise(sound, sampleRate, 23);
}
