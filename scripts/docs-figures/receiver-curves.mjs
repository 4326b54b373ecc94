import { shareChart } from './share-chart.mjs';
import { accent } from './svg.mjs';

/** How often a whole call is received, against the strength of the signal, as measured. */
export function receiverCurves({ id, title, success }) {
  const { characters22, characters30, trialsPerPoint } = success;
  const told = (name, { half, most, classicalHalf, classicalMost }) =>
    `${name}: half of all calls at ${half.toFixed(1)} dB and 99 per cent at ${most.toFixed(1)} dB, tone by tone at ${classicalHalf.toFixed(1)} and ${classicalMost.toFixed(1)} dB.`;
  return shareChart({
    id,
    title,
    description: `Share of calls received right, clean or repaired, ${trialsPerPoint} bursts a point. ${told('22 characters', characters22)} ${told('30 characters', characters30)}`,
    range: [-2, 14],
    unit: 'energy of a bit over noise density, dB',
    curves: [
      { points: characters22.receiver, colour: accent, dash: '', name: 'this receiver, 22 characters' },
      {
        points: characters30.receiver,
        colour: accent,
        dash: '6 4',
        name: 'this receiver, 30 characters',
      },
      {
        points: characters22.classical,
        colour: 'currentColor',
        dash: '',
        name: 'tone by tone, 22 characters',
      },
      {
        points: characters30.classical,
        colour: 'currentColor',
        dash: '6 4',
        name: 'tone by tone, 30 characters',
      },
    ],
    marks: [characters22, characters30].flatMap(({ ideal }) => [
      { at: ideal.limit[0], share: 0.5 },
      { at: ideal.limit[1], share: 0.99 },
    ]),
    marksName: 'limit: a receiver that is told phase, instant and clock',
  });
}
