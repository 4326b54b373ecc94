import { announce } from '../frame/announce.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { cautionBox, sentence } from '../frame/ledger.ts';
import { spokenList } from '../frame/spoken.ts';
import type { Choice } from './choices.ts';
import { endingOf } from './ending.ts';
import {
  advance,
  beginPlay,
  choose,
  isAwaitingAnswer,
  type Line,
  nextHappening,
  type Play,
  type Turn,
} from './play.ts';
import { manners, type Scene, scenes } from './scenes.ts';

/** Steps a link may hold: a play that is longer goes in circles. */
const MOST_MOVES = 200;

const VERBS: Readonly<Record<Line['kind'], string>> = {
  person: '',
  clock: '',
  send: 'sends',
  'stop-sending': 'breaks off',
  tune: 'changes',
  sound: 'sounds',
  silence: 'ends',
  show: 'shows',
  ask: 'asks',
  speak: 'says',
  advise: 'advises',
  issue: 'declines',
};

fill(
  byId('scene'),
  scenes.map(({ word, title }) => h('option', { value: word }, title)),
);
const form = byId<HTMLFormElement>('question');
const moves = byId<HTMLInputElement>('moves');
// Another scene starts over; a link brings its own moves with it.
form.addEventListener('input', () => {
  moves.value = '';
});
const finding = bindFinding(form, answer);
bindShare(finding);
byId('next').addEventListener('click', () => move('n'));
byId('again').addEventListener('click', () => finding.set({ moves: '' }));
byId('back').addEventListener('click', () => finding.set({ moves: moves.value.slice(0, -1) }));

function move(how: string): void {
  finding.set({ moves: moves.value + how });
  // The newest is what the reader came for, and below it what can be done about it.
  for (const id of ['script', 'choices']) byId(id).lastElementChild?.scrollIntoView({ block: 'nearest' });
}

function answer(question: Question): void {
  const scene = scenes.find(({ word }) => word === question['scene']) ?? (scenes[0] as Scene);
  show(replay(scene, question), (question['moves'] ?? '').length >= MOST_MOVES);
}

/** The play that the moves lead to: `n` for the next happening, a figure for a choice. */
function replay(scene: Scene, question: Question): Play {
  let play = beginPlay(
    scene,
    manners.get(question['manner'] ?? '') ?? 'by-hand',
    (question['air'] ?? 'clean') as Play['air'],
  );
  for (const how of (question['moves'] ?? '').slice(0, MOST_MOVES)) {
    play = how === 'n' ? advance(play) : choose(play, Number.parseInt(how, 36));
  }
  return play;
}

function show(play: Play, full: boolean): void {
  const { scene, turns, choices } = play;
  const over = nextHappening(play) === null;
  const last = turns.at(-1);
  const ending = full
    ? `A link holds ${MOST_MOVES} steps and no more: go back, or begin again.`
    : over
      ? endingOf(play)
      : '';
  announce(
    [last === undefined ? sentence(scene.title) : sentence(told(play, last)), ending].join(' ').trim(),
  );
  byId('ending').textContent = ending;
  fill(
    byId('caution'),
    scene.word === 'distress' || scene.word === 'answered'
      ? cautionBox([
          {
            text: 'A simulated distress, for learning only. A false alert on the air starts a search: sending one on purpose is an offence in most countries; cancel one sent by mistake at once: stop it on the radio, then cancel by voice on channel 16',
            clause: '47 CFR 80.335(a); RR 2024 Nos. 32.53B to 32.53E',
          },
        ])
      : null,
  );
  fill(
    byId('script'),
    withoutEchoes(turns).map((turn) => turnItem(play, turn)),
  );
  fill(byId('choices'), full ? null : choiceButtons(play, choices));
  byId<HTMLButtonElement>('next').disabled = over || full;
  byId('next').textContent = nextLabel(play, over);
  byId<HTMLButtonElement>('back').disabled = turns.length === 0;
  byId<HTMLButtonElement>('again').disabled = turns.length === 0;
}

/** The button never walks past an open question unseen. */
function nextLabel(play: Play, over: boolean): string {
  if (over) return play.choices.length > 0 ? 'Waiting for an answer' : 'Nothing more happens';
  return isAwaitingAnswer(play) ? 'Next: nobody answers' : 'Next';
}

/** A caution that was given once is not given again. */
function withoutEchoes(turns: readonly Turn[]): readonly Turn[] {
  const given = new Set<string>();
  return turns.map(({ at, lines }) => ({
    at,
    lines: lines.map((line) => {
      const cautions = line.cautions.filter((caution) => !given.has(caution));
      for (const caution of cautions) given.add(caution);
      return { ...line, cautions };
    }),
  }));
}

function told({ scene }: Play, { lines }: Turn): string {
  const line = lines.find(({ kind }) => kind !== 'person' && kind !== 'clock') ?? lines[0];
  return line === undefined
    ? ''
    : VERBS[line.kind] === ''
      ? `${scene.roles[line.side].name}: ${line.text}`
      : `${scene.roles[line.side].name} ${VERBS[line.kind]}${separator(line.kind)}${line.text}`;
}

function turnItem({ scene }: Play, { at, lines }: Turn): HTMLElement {
  const side = lines[0]?.side ?? 0;
  return h(
    'li',
    { class: side === 0 ? 'first' : 'second' },
    h('p', { class: 'margin' }, clock(at)),
    h(
      'div',
      {},
      h('h3', {}, scene.roles[side].name),
      lines.map((line) => lineItem(line, scene.roles[line.side === 0 ? 1 : 0].name)),
    ),
  );
}

function lineItem({ kind, text, clause, cautions, advised, spoken }: Line, other: string): HTMLElement {
  const verb = VERBS[kind];
  return h(
    'div',
    { class: verb === '' ? 'stage' : 'said' },
    h(
      'p',
      {},
      h('i', {}, verb),
      separator(kind),
      ended(text),
      ' ',
      clause === null ? '' : h('span', { class: 'clause' }, clause),
    ),
    advised.length === 0
      ? null
      : h(
          'ul',
          {},
          advised.map(({ text: what, clause: source }) =>
            h(
              'li',
              {},
              sentence(what),
              source === null ? null : [' ', h('span', { class: 'clause' }, source)],
            ),
          ),
        ),
    spokenList(spoken, other),
    cautions.map((caution) => h('p', { class: 'mind' }, sentence(caution))),
  );
}

/** What others wrote follows a colon, what follows the verb does not. */
function separator(kind: Line['kind']): string {
  if (VERBS[kind] === '') return '';
  return kind === 'show' || kind === 'ask' || kind === 'issue' ? ': ' : ' ';
}

function ended(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}

function choiceButtons({ scene }: Play, choices: readonly Choice[]): HTMLElement | null {
  if (choices.length === 0) return null;
  return h(
    'div',
    { role: 'group', 'aria-label': 'What the people can do now' },
    h('h3', {}, 'What the people can do now'),
    h(
      'p',
      { class: 'buttons' },
      choices.map(({ side, label }, index) =>
        h(
          'button',
          {
            type: 'button',
            onclick: () => {
              move(index.toString(36));
              byId('next').focus();
            },
          },
          `${scene.roles[side].name}: ${label}`,
        ),
      ),
    ),
  );
}

function clock(at: number): string {
  return new Date(at).toISOString().slice(11, 21).replace(/\.0$/, '');
}
