import { shareChart } from './share-chart.mjs';
import { accent } from './svg.mjs';

/** The same through a simulated FM radio: phase-modulated carrier, noise, limiter and discriminator with its clicks. */
export function radioCurves({ id, title, radio }) {
  const { curves, half, characters, noiseBandHz, trialsPerPoint } = radio;
  const told = (name, key) =>
    `${name}: half of all calls at ${half[key].toFixed(1)} dB, tone by tone at ${half[`${key}Classical`].toFixed(1)} dB.`;
  return shareChart({
    id,
    title,
    description: `Share of calls of ${characters} characters received through a simulated FM channel, ${trialsPerPoint} bursts a point. ${told('Straight from the discriminator', 'flat')} ${told('With de-emphasis', 'deEmphasised')}`,
    range: [-4, 10],
    unit: `carrier over noise in ${noiseBandHz / 1000} kHz, dB`,
    curves: [
      { points: curves.flat, colour: accent, dash: '', name: 'this receiver, discriminator' },
      { points: curves.deEmphasised, colour: accent, dash: '6 4', name: 'this receiver, de-emphasis' },
      { points: curves.flatClassical, colour: 'currentColor', dash: '', name: 'tone by tone, discriminator' },
      {
        points: curves.deEmphasisedClassical,
        colour: 'currentColor',
        dash: '6 4',
        name: 'tone by tone, de-emphasis',
      },
    ],
  });
}
