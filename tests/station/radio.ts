import { expect } from 'vitest';
import type {
  Effect,
  EventWithoutTime,
  LogEntry,
  StationEvent,
  StationState,
  StationStep,
} from '../../src/station/index.ts';
import { createStation, type SettingsInput, step } from '../../src/station/index.ts';

/** An event without its instant: the radio's own clock gives it. */
export type Happening = EventWithoutTime;

/** A radio for tests: carries out what its station asks for, and keeps what it asked for. */
export class Radio {
  state: StationState;
  now: number;
  busy = false;
  onAir: Effect<'send'> | null = null;
  effects: Effect[] = [];
  log: LogEntry[] = [];
  transitions: StationStep['transitions'][number][] = [];

  constructor(settings: SettingsInput, now: number = Date.UTC(2026, 5, 1, 18, 0)) {
    this.state = createStation(settings);
    this.now = now;
  }

  /** Gives an event now, and returns its effects. */
  give(happening: Happening): readonly Effect[] {
    const turn = step(deepFreeze(this.state), { ...happening, at: this.now } as StationEvent);
    this.state = turn.state;
    this.transitions.push(...turn.transitions);
    this.effects.push(...turn.effects);
    for (const effect of turn.effects) {
      if (effect.kind === 'log') this.log.push(effect.entry);
      if (effect.kind === 'stop-sending') {
        expect(this.onAir?.dialogue, 'only what is on the air is stopped').toBe(effect.dialogue);
        this.onAir = null;
      }
      if (effect.kind === 'send') {
        expect(this.onAir, 'never two transmissions at once').toBeNull();
        this.onAir = effect;
      }
    }
    return turn.effects;
  }

  /** Lets the call on the air end after its length on VHF, and returns it. */
  finish(): Effect<'send'> {
    const sent = this.onAir;
    if (sent === null) throw new Error('nothing is on the air');
    this.pass(sent.times === 5 ? 2250 : 600);
    this.onAir = null;
    this.give({ kind: 'sent', dialogue: sent.dialogue as number });
    return sent;
  }

  /** Lets time pass, waking the station whenever it asked for it. */
  pass(milliseconds: number): readonly Effect[] {
    const end = this.now + milliseconds;
    const before = this.effects.length;
    while (this.state.wakeAt !== null && this.state.wakeAt <= end) {
      this.now = Math.max(this.now, this.state.wakeAt);
      this.give({ kind: 'clock' });
    }
    this.now = end;
    return this.effects.slice(before);
  }

  /** The phases of all dialogues. */
  get phases(): readonly string[] {
    return this.state.dialogues.map(({ procedure, phase }) => `${procedure}: ${phase}`);
  }

  /** Number of the latest dialogue. */
  get latest(): number {
    return this.state.nextDialogue - 1;
  }
}

/** The effects of one kind. */
export function effectsOf<K extends Effect['kind']>(
  effects: readonly Effect[],
  kind: K,
): readonly Extract<Effect, { kind: K }>[] {
  return effects.filter((effect): effect is Extract<Effect, { kind: K }> => effect.kind === kind);
}

/** A step must not change what it was given. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) deepFreeze(inner);
  }
  return value;
}
