import { attempts } from './attempts.ts';
import { CLEAN_LEVELS, cleanCalls } from './clean-calls.ts';
import { falseCalls } from './false-calls.ts';
import { keepFigures, type Section, type Size } from './figures.ts';
import { radio } from './radio.ts';
import { robustness } from './robustness.ts';
import { speed } from './speed.ts';
import { spoilt } from './spoilt/spoilt.ts';
import { success } from './success.ts';
import { wrongCalls } from './wrong-calls.ts';

/** Sections by the name they have on the command line and in docs/figures/receiver.json. */
const SECTIONS: Readonly<Record<string, Section>> = {
  success,
  robustness,
  radio,
  attempts,
  wrongCalls,
  ...Object.fromEntries(CLEAN_LEVELS.map((at) => [`clean${at}`, (size: Size) => cleanCalls(at, size)])),
  spoilt,
  falseCalls,
  speed,
};

const wanted = process.argv.slice(2).filter((word) => word !== '--full');
const size = process.argv.includes('--full') ? 'full' : 'quick';
let short = 0;
for (const [name, section] of Object.entries(SECTIONS)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const { figures, lines, shortcomings } = section(size);
  console.log(
    [`== ${name} (${size})`, ...lines, ...shortcomings.map((text) => `SHORT OF THE GOAL: ${text}`), ''].join(
      '\n',
    ),
  );
  short += shortcomings.length;
  if (size === 'full') keepFigures(name, figures);
}
process.exit(short === 0 ? 0 : 1);
