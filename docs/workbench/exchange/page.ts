import { announce } from '../frame/announce.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { cautionBox, sentence } from '../frame/ledger.ts';
import {
  advance,
  beginPlay,
  type Choice,
  choose,
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
  reject: 'declines',
};

fill(
  byId('scene'),
  scenes.map(({ word, title }) => h('option', { value: word }, title)),
);
let setting = '';
const finding = bindFinding(byId<HTMLFormElement>('question'), answer);
bindShare();
byId('next').addEventListener('click', () => move('n'));
byId('again').addEventListener('click', () => finding.set({ moves: '' }));
byId('back').addEventListener('click', () =>
  finding.set({ moves: byId<HTMLInputElement>('moves').value.slice(0, -1) }),
);

function move(how: string): void {
  finding.set({ moves: byId<HTMLInputElement>('moves').value + how });
}

function answer(question: Question): void {
  const chosen = `${question['scene']} ${question['manner']} ${question['air']}`;
  // Another scene begins anew; a link brings its own moves with it.
  if (setting !== '' && setting !== chosen && question['moves'] !== '') {
    setting = chosen;
    finding.set({ moves: '' });
    return;
  }
  setting = chosen;
  const scene = scenes.find(({ word }) => word === question['scene']) ?? (scenes[0] as Scene);
  const play = replay(scene, question);
  show(play);
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

function show(play: Play): void {
  const { scene, turns, choices } = play;
  const over = nextHappening(play) === null;
  const last = turns.at(-1);
  announce(last === undefined ? sentence(scene.title) : sentence(told(play, last)));
  fill(
    byId('caution'),
    scene.word === 'distress' || scene.word === 'answered'
      ? cautionBox([
          {
            text: 'A pretended distress, for learning only. A false alert on the air starts a search and is an offence',
            clause: '47 CFR 80.335; Radio Regulations Art. 32, from memory',
          },
        ])
      : null,
  );
  fill(
    byId('script'),
    withoutEchoes(turns).map((turn) => turnItem(play, turn)),
  );
  fill(byId('choices'), choicesOf(play, choices));
  byId<HTMLButtonElement>('next').disabled = over;
  byId('next').textContent =
    over && choices.length > 0 ? 'They wait for somebody' : over ? 'Nothing more happens' : 'Next';
  byId<HTMLButtonElement>('back').disabled = turns.length === 0;
  byId<HTMLButtonElement>('again').disabled = turns.length === 0;
}

/** A caution that was given once is not given again. */
function withoutEchoes(turns: readonly Turn[]): readonly Turn[] {
  const given = new Set<string | null>();
  return turns.map(({ at, lines }) => ({
    at,
    lines: lines.map((line) => {
      const echo = given.has(line.caution);
      given.add(line.caution);
      return echo ? { ...line, caution: null } : line;
    }),
  }));
}

function told({ scene }: Play, { lines }: Turn): string {
  const line = lines.find(({ kind }) => kind !== 'person' && kind !== 'clock') ?? lines[0];
  return line === undefined
    ? ''
    : `${scene.roles[line.side].name} ${VERBS[line.kind]}${separator(line.kind)}${line.text}`;
}

function turnItem({ scene }: Play, { at, lines }: Turn): HTMLElement {
  const side = lines[0]?.side ?? 0;
  return h(
    'li',
    { class: side === 0 ? 'first' : 'second' },
    h('p', { class: 'margin' }, clock(at)),
    h('div', {}, h('h3', {}, scene.roles[side].name), lines.map(lineItem)),
  );
}

function lineItem({ kind, text, clause, caution, spoken }: Line): HTMLElement {
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
    spoken.length === 0
      ? null
      : h(
          'ul',
          { class: kind === 'speak' ? 'spoken' : '' },
          spoken.map((words) => h('li', {}, words)),
        ),
    caution === null ? null : h('p', { class: 'mind' }, sentence(caution)),
  );
}

/** What others wrote stands behind a colon, what follows the verb does not. */
function separator(kind: Line['kind']): string {
  if (VERBS[kind] === '') return '';
  return kind === 'show' || kind === 'ask' || kind === 'reject' ? ': ' : ' ';
}

function ended(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}

function choicesOf({ scene }: Play, choices: readonly Choice[]): HTMLElement | null {
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
