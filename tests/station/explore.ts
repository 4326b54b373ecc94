import fc from 'fast-check';
import type { Verdict } from '../../src/burst/index.ts';
import { answersTo, type Call } from '../../src/call/index.ts';
import { nextRandom } from '../../src/station/engine/turn.ts';
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
import { bothGrounds, callToStart, coast, friend, heardCall, own } from './happenings.ts';
import type { Happening } from './radio.ts';

const automatic = {
  individual: 'automatic',
  position: 'reject-busy',
  test: 'automatic',
  polling: 'automatic',
  group: 'automatic',
  area: 'automatic',
  'all-ships': 'automatic',
} as const;

const settings: readonly SettingsInput[] = [
  { mmsi: own, equipment: 'D', groups: ['023299905'] },
  { mmsi: own, equipment: 'A', tuning: 'by-hand', policies: automatic },
  { mmsi: own, equipment: 'A', groups: ['023299905'], policies: automatic },
  // Long times cut short, so that walks get behind them.
  { mmsi: own, equipment: 'A', timers: { 'listen-after-alert': 15_000, 'alert-repeat': 30_000 } },
  { mmsi: '002329990', equipment: 'coast', designated: true },
];

const heard = fc.sample(heardCall, { numRuns: 2000, seed: 1 });
const startable = fc.sample(callToStart, { numRuns: 2000, seed: 2 });
const start = Date.UTC(2026, 5, 1, 18, 0);
const verdicts: readonly Verdict[] = ['clean', 'clean', 'repaired', 'doubtful'];

interface Candidate {
  readonly row: TransitionRow;
  readonly dialogue: Dialogue | undefined;
}

/**
 * Rows of the table that long walks do not take. A walk goes from phase to phase by whatever the table asks for there,
 * rows that were seldom tried first. Deterministic.
 */
export function rowsNeverTaken(): readonly string[] {
  let random = 7;
  const below = (count: number): number => {
    const [value, next] = nextRandom(random);
    random = next;
    return Math.floor(value * count);
  };
  const oneOf = <T>(list: readonly T[]): T => list[below(list.length)] as T;

  const rows = transitionTable();
  const taken = new Map(rows.map(({ id }) => [id, 0]));
  const tried = new Map<string, number>();
  const seldomTried = (candidates: readonly Candidate[]): Candidate =>
    [oneOf(candidates), oneOf(candidates), oneOf(candidates), oneOf(candidates)].reduce((best, candidate) =>
      (tried.get(candidate.row.id) ?? 0) < (tried.get(best.row.id) ?? 0) ? candidate : best,
    );
  // Every second walk begins where a row that was never taken could be.
  const seen = new Map<string, StationState[]>();
  const remember = (state: StationState): void => {
    for (const { procedure, phase } of state.dialogues) {
      const states = seen.get(`${procedure} ${phase}`) ?? [];
      if (states.length < 100) states.push(state);
      else states[below(100)] = state;
      seen.set(`${procedure} ${phase}`, states);
    }
  };
  for (let walk = 0; walk < 20_000; walk++) {
    const open = rows.filter(({ id }) => taken.get(id) === 0);
    if (open.length === 0) break;
    const wanted = oneOf(open);
    const near = walk % 2 === 0 ? undefined : seen.get(`${wanted.procedure} ${wanted.from}`);
    let state = near === undefined ? createStation(oneOf(settings)) : oneOf(near);
    const first = state.dialogues.find(
      ({ procedure, phase }) => procedure === wanted.procedure && phase === wanted.from,
    );
    if (near !== undefined) tryRow({ row: wanted, dialogue: first });
    for (let stride = 0; stride < (near === undefined ? 60 : 2) && state.dialogues.length < 4; stride++) {
      tryRow(
        seldomTried([
          ...rows
            .filter(({ from }) => from === 'new')
            .map((row): Candidate => ({ row, dialogue: undefined })),
          ...state.dialogues.flatMap((dialogue) =>
            rows
              .filter(({ from, procedure }) => from === dialogue.phase && procedure === dialogue.procedure)
              .map((row): Candidate => ({ row, dialogue })),
          ),
        ]),
      );
      remember(state);
    }

    function tryRow({ row, dialogue }: Candidate): void {
      tried.set(row.id, (tried.get(row.id) ?? 0) + 1);
      if (below(4) === 0) give({ kind: 'channel', busy: below(2) === 0 });
      const until = Object.entries(dialogue?.waits ?? {}).find(([wait]) => row.on === `${wait} over`)?.[1];
      for (const happening of happeningsFor(row, dialogue)) give(happening, until);
    }

    function give(happening: Happening, until?: number): void {
      const from = Math.max(state.now, start);
      const wake = Math.max(state.wakeAt ?? from, from);
      const late = from + (below(100) / 100) * (wake - from);
      const at = happening.kind === 'clock' ? Math.max(until ?? wake, from) : below(2) === 0 ? late : from;
      const turn = step(state, { ...happening, at } as StationEvent);
      for (const { row } of turn.transitions) taken.set(row, (taken.get(row) ?? 0) + 1);
      state = turn.state;
    }
  }
  return rows.map(({ id }) => id).filter((id) => taken.get(id) === 0);

  function happeningsFor(row: TransitionRow, dialogue: Dialogue | undefined): readonly Happening[] {
    const { on, from, procedure } = row;
    if (from === 'new') {
      if (procedure === 'own-distress') return [{ kind: 'prepare-alert' }];
      if (procedure === 'outgoing') return [{ kind: 'call', call: oneOf(startable), because: bothGrounds }];
      return [{ kind: 'received', call: oneOf(heard), verdict: oneOf(verdicts) }];
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
      case 'reject':
        return [{ kind: 'reject', dialogue: id, reason: 'busy' }];
      case 'counter-propose':
        return [{ kind: 'counter-propose', dialogue: id, channel: '77' }];
      case 'repeated':
        return dialogue.call === null ? [] : [{ kind: 'received', call: dialogue.call, verdict: 'clean' }];
      case 'able':
      case 'unable':
      case 'answered': {
        const { call } = dialogue;
        const called = call?.to?.kind === 'station' ? call.to.mmsi : null;
        if (call === null || called === null) return [];
        const channels = below(2) === 0 ? ['77'] : [];
        const { answers: all } = answersTo(call, { own: called, channels });
        const answers = all.filter(({ meaning }) => (meaning === 'unable') === (on === 'unable'));
        return answers.length === 0
          ? []
          : [{ kind: 'received', call: oneOf(answers).call, verdict: 'clean' }];
      }
      case 'confirm':
      case 'decline':
      case 'retry':
      case 'dismiss':
      case 'spoken':
      case 'assist':
      case 'stand-by':
      case 'traffic':
      case 'no-traffic':
      case 'acknowledge':
        return [{ kind: on, dialogue: id }];
      case 'answered-damaged':
        return happeningsFor({ ...row, on: oneOf(['able', 'unable', 'answered']) }, dialogue).map(
          (happening) => ({
            ...happening,
            ...('verdict' in happening && { verdict: 'doubtful' as const }),
          }),
        );
      default:
        return [{ kind: 'received', call: distressCall(on, dialogue), verdict: oneOf(verdicts) }];
    }
  }

  /** A call about the distress of a dialogue, from the coast or from the vessel herself. */
  function distressCall(on: string, dialogue: Dialogue): Call {
    const call = oneOf(heard);
    const distressed = dialogue.procedure === 'heard-distress' ? dialogue.distressed : own;
    const about = {
      to: { kind: 'all-ships' },
      from: oneOf([coast, friend]),
      distressed,
      nature: oneOf(['undesignated', 'flooding'] as const),
      position: null,
      time: null,
      subsequent: 'telephony-simplex',
    } as const;
    if (on.startsWith('acknowledge')) return { kind: 'distress-acknowledgement', ...about };
    if (on.startsWith('relay')) return { kind: 'distress-relay', ...about };
    if (on === 'cancellation') return { kind: 'distress-self-cancel', ...about, from: distressed };
    if (on !== 'alert') return call;
    const { distressed: _, ...alert } = about;
    return { kind: 'distress-alert', ...alert, to: { kind: 'all-stations' }, from: distressed };
  }
}
