import fc from 'fast-check';
import type { Verdict } from '../../src/burst/index.ts';
import { answersTo } from '../../src/call/index.ts';
import {
  createStation,
  type Dialogue,
  type SettingsInput,
  type StationEvent,
  type StationState,
  step,
  type TransitionRow,
  transitionTable,
} from '../../src/station/index.ts';
import { nextRandom } from '../../src/station/random.ts';
import { callToStart, heardCall, own } from './happenings.ts';
import type { Happening } from './radio.ts';

const settings: readonly SettingsInput[] = [
  { mmsi: own, equipment: 'D', groups: ['023299905'] },
  { mmsi: own, equipment: 'A', tuning: 'by-hand' },
  {
    mmsi: own,
    equipment: 'A',
    policies: {
      individual: 'automatic',
      position: 'refuse-busy',
      test: 'automatic',
      polling: 'automatic',
      group: 'automatic',
      area: 'automatic',
      'all-ships': 'automatic',
    },
    groups: ['023299905'],
  },
  { mmsi: '002329990', equipment: 'coast' },
];

const heard = fc.sample(heardCall, { numRuns: 2000, seed: 1 });
const startable = fc.sample(callToStart, { numRuns: 2000, seed: 2 });
const start = Date.UTC(2026, 5, 1, 18, 0);
const verdicts: readonly Verdict[] = ['clean', 'clean', 'repaired', 'doubtful'];

/**
 * Rows of the table that a search does not reach: it keeps states of every phase it has seen, and from them tries what
 * a row asks for. Deterministic.
 */
export function rowsNeverTaken(): readonly string[] {
  let random = 7;
  const below = (count: number): number => {
    const [value, next] = nextRandom(random);
    random = next;
    return Math.floor(value * count);
  };
  const oneOf = <T>(list: readonly T[]): T => list[below(list.length)] as T;

  // States by kind of station and by phase, so that no kind is crowded out; small ones, so that they differ.
  const seen = new Map<string, StationState[]>();
  const keep = (station: number, state: StationState): void => {
    if (state.dialogues.length > 4) return;
    for (const { procedure, phase } of [...state.dialogues, { procedure: 'any', phase: 'new' }]) {
      const key = `${station} ${procedure} ${phase}`;
      const states = seen.get(key) ?? [];
      if (states.length < 40) states.push(state);
      else states[below(40)] = state;
      seen.set(key, states);
    }
  };

  const open = new Set(transitionTable().map((row) => row.id));
  for (let round = 0; round < 400 && open.size > 0; round++) {
    for (const row of transitionTable()) {
      for (let attempt = open.has(row.id) ? 40 : 1; attempt > 0; attempt--) {
        const station = below(settings.length);
        const states = seen.get(
          row.from === 'new' ? `${station} any new` : `${station} ${row.procedure} ${row.from}`,
        );
        if (states === undefined && row.from !== 'new') continue;
        const isFresh = states === undefined || (row.from === 'new' && below(2) === 0);
        let state = isFresh ? createStation(oneOf([settings[station] as SettingsInput])) : oneOf(states);
        const give = (happening: Happening): void => {
          const from = Math.max(state.now, start);
          const wake = Math.max(state.wakeAt ?? from, from);
          const at =
            happening.kind === 'clock'
              ? wake
              : below(4) === 0
                ? from + (below(100) / 100) * (wake - from)
                : from;
          const turn = step(state, { ...happening, at } as StationEvent);
          for (const { row: id } of turn.transitions) open.delete(id);
          state = turn.state;
        };
        if (below(3) === 0) give({ kind: 'channel', busy: below(2) === 0 });
        if (below(8) === 0) give({ kind: 'heard', call: oneOf(heard), verdict: 'clean' });
        const dialogue = state.dialogues.find(
          ({ procedure, phase }) => procedure === row.procedure && phase === row.from,
        );
        for (const happening of happeningsFor(row, dialogue)) give(happening);
        keep(station, state);
      }
    }
  }
  return [...open];

  function happeningsFor(
    { on, from, procedure }: TransitionRow,
    dialogue: Dialogue | undefined,
  ): readonly Happening[] {
    if (from === 'new') {
      if (procedure === 'own-distress') return [{ kind: 'prepare-alert' }];
      if (procedure === 'outgoing')
        return [{ kind: 'call', call: oneOf(startable), because: 'more-help-needed' }];
      return [{ kind: 'heard', call: oneOf(heard), verdict: oneOf(verdicts) }];
    }
    if (dialogue === undefined) return [];
    const { id } = dialogue;
    if (on.endsWith(' over')) return [{ kind: 'clock' }];
    switch (on) {
      case 'channel free':
        return [{ kind: 'channel', busy: false }];
      case 'sent':
      case 'send-failed':
        return [{ kind: on, dialogue: id }];
      case 'press':
      case 'release':
      case 'cancel':
      case 'stop':
        return [{ kind: `${on}-alert` }];
      case 'describe':
        return [{ kind: 'describe-alert', nature: 'sinking' }];
      case 'answer':
        return [{ kind: 'answer', dialogue: id }];
      case 'refuse':
        return [{ kind: 'refuse', dialogue: id, reason: 'busy' }];
      case 'offer':
        return [{ kind: 'offer', dialogue: id, channel: '77' }];
      case 'repeated':
        return dialogue.call === null ? [] : [{ kind: 'heard', call: dialogue.call, verdict: 'clean' }];
      case 'able':
      case 'unable':
      case 'answered': {
        const { call } = dialogue;
        const called = call?.to?.kind === 'station' ? call.to.mmsi : null;
        if (call === null || called === null) return [];
        const channels = below(2) === 0 ? ['77'] : [];
        const { answers: all } = answersTo(call, { own: called, channels });
        const answers = all.filter(({ meaning }) => (meaning === 'unable') === (on === 'unable'));
        return answers.length === 0 ? [] : [{ kind: 'heard', call: oneOf(answers).call, verdict: 'clean' }];
      }
      case 'confirm':
      case 'decline':
      case 'retry':
      case 'close':
      case 'spoken':
      case 'assist':
      case 'stand-by':
      case 'traffic':
      case 'no-traffic':
      case 'acknowledge':
        return [{ kind: on, dialogue: id }];
      default:
        return [{ kind: 'heard', call: oneOf(heard), verdict: oneOf(verdicts) }];
    }
  }
}
