// Writes the tables of the library as pages of the docs site, docs/generated/*.md, from the built package.
// Run after `npm run build`; the state diagrams of the transition page come from scripts/docs-figures.mjs.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { compositions, fieldLengths } from 'seahail/call';
import { formatMegahertz } from 'seahail/channel';
import { canadaPlan } from 'seahail/channel/canada';
import { internationalPlan } from 'seahail/channel/international';
import { netherlandsInlandPlan, netherlandsSeaPlan } from 'seahail/channel/netherlands';
import { swedenPlan } from 'seahail/channel/sweden';
import { unitedKingdomPlan } from 'seahail/channel/united-kingdom';
import { unitedStatesPlan } from 'seahail/channel/united-states';
import { identityForms, usesOf } from 'seahail/identity';
import { administrationsEdition, allAdministrations } from 'seahail/identity/administrations';
import { english } from 'seahail/locale/en';
import { NETWORK_FAULTS, PARAMETER_GROUPS } from 'seahail/network';
import { FAULTS } from 'seahail/sentence';
import { phaseTable, timers, transitionTable } from 'seahail/station';

const out = fileURLToPath(new URL('../docs/generated', import.meta.url));
mkdirSync(out, { recursive: true });

/** A cell of a Markdown table: nothing in it may be taken for markup, and long text gets room. */
function cell(value) {
  if (value === null || value === undefined || value === '') return '–';
  const text = String(value)
    .replace(/[\\`*_{}[\]<>|@]/g, (sign) => `&#${sign.charCodeAt(0)};`)
    .replace(/\s+/g, ' ');
  const room = [
    [120, 'longer'],
    [40, 'long'],
    [18, 'middling'],
  ].find(([length]) => text.length > length);
  return room === undefined ? text : `<span class="${room[1]}">${text}</span>`;
}

function table(head, rows) {
  const line = (cells) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map((row) => line(row.map(cell)))].join('\n');
}

function page(name, title, ...parts) {
  const text = [
    '---',
    `title: "${title}"`,
    'group: Tables',
    '---',
    '',
    `# ${title}`,
    '',
    parts.join('\n\n'),
    '',
  ];
  writeFileSync(join(out, `${name}.md`), text.join('\n'));
}

/** What many rows say alike is said once, below their table, under a mark. */
function notes(markOf) {
  const said = [];
  return {
    of(text) {
      if (!said.includes(text)) said.push(text);
      return markOf(said.indexOf(text));
    },
    list: () => said.map((text, index) => `- **${markOf(index)}**: ${text}`).join('\n'),
  };
}

const words = (name) => name.replaceAll('-', ' ');
const list = (names) => names.map(words).join(', ');

function identityFormsPage() {
  const yes = (value) => (value ? 'yes' : 'no');
  const rows = identityForms.map((form) => {
    const uses = usesOf(form);
    return [
      form.pattern,
      form.name,
      form.kind,
      form.holder,
      yes(uses.own),
      uses.individual ? 'station' : uses.group ? 'group' : 'no',
      form.clause.replace('ITU-R M.585-10 ', '').replaceAll('Annex ', 'A'),
      form.since,
      form.source === 'seen' ? 'read' : 'memory',
    ];
  });
  page(
    'identity-forms',
    'Identity forms',
    'Every form a nine-digit identity can have. Digits stand for themselves, MID for the three digits of an administration (the first is 2 to 7), x and y for any digit. Clauses are those of ITU-R M.585-10, A1 for its Annex 1; *read* means in a published text, *memory* that the text was not at hand. The [guide to identities](../guide/identity.md) tells what to do with them.',
    table(
      [
        'form',
        'name',
        'kind',
        'who holds one',
        'may call',
        'may be called as',
        'clause',
        'known since',
        'how known',
      ],
      rows,
    ),
  );
}

function administrationsPage() {
  const rows = allAdministrations().map(({ mid, administration, area, iso3166 }) => [
    mid,
    administration,
    area,
    iso3166,
  ]);
  const { document, asOf, entries } = administrationsEdition;
  page(
    'administrations',
    'Administrations',
    `The ${entries} maritime identification digits (MIDs) that the library knows, from the ${document} as of ${asOf}. A MID that is missing here may have been allocated since: that is a reason to look again, not to refuse a number. A MID says who issued the number. It need not be the ship's flag today, and it does not tell where she is.`,
    table(['MID', 'administration', 'area', 'ISO 3166-1'], rows),
  );
}

function channelsPage(name, plan) {
  const known = notes((index) => String.fromCharCode(97 + index));
  const bars = notes((index) => String(index + 1));
  const rows = plan.channels.map((channel) => {
    const { nonCommercial, commercial } = channel.intership;
    const facts = new Map();
    for (const [fact, { basis, source }] of Object.entries(channel.evidence)) {
      const from = basis === 'memory' ? `${source}, unverified` : source;
      facts.set(from, [...(facts.get(from) ?? []), fact]);
    }
    return [
      [channel.designator, ...channel.aliases].join(', '),
      channel.shipKHz === null ? null : formatMegahertz(channel.shipKHz),
      channel.coastKHz === null ? null : formatMegahertz(channel.coastKHz),
      [channel.note, channel.region, channel.caution].filter((text) => text !== null).join('; '),
      `${nonCommercial} / ${commercial}`,
      [
        channel.powerRule ?? (channel.powerLimitW === null ? null : `${channel.powerLimitW} W`),
        channel.coastPowerLimitW === null ? null : `coast ${channel.coastPowerLimitW} W`,
      ]
        .filter((text) => text !== null)
        .join('; '),
      channel.assignable ? 'yes' : `no (${bars.of(channel.notAssignableReason)})`,
      known.of([...facts].map(([from, which]) => `${which.join(', ')} from ${from}`).join('; ')),
    ];
  });
  page(
    name,
    `Channels: ${plan.name}`,
    `${capital(plan.edition)}. Frequencies are in megahertz, and name the side that transmits.`,
    `> **Caution.** This table describes; it permits nothing. National rules, the licence and the coast station decide.`,
    `Call by voice on ${plan.callingChannels.join(', then ')}.`,
    ...(plan.rules.length > 0
      ? [`On all channels:\n\n${plan.rules.map((text) => `- ${text}`).join('\n')}`]
      : []),
    `Known weaknesses:\n\n${plan.cautions.map((text) => `- ${text}`).join('\n')}`,
    `Taken from:\n\n${plan.sources.map((text) => `- ${text}`).join('\n')}`,
    'How to use it: [guide to channels](../guide/channel.md).',
    table(
      [
        'channel',
        'ships send',
        'coast sends',
        'for, where, and cautions',
        'between ships: pleasure / business',
        'power',
        'in a call',
        'known',
      ],
      rows,
    ),
    `## How each row is known\n\nThe letters of the last column. *From memory* means that the text was not at hand.\n\n${known.list()}`,
    `## Why no call names a channel\n\nThe numbers in brackets after *no* in the second column from the right.\n\n${bars.list()}`,
  );
}

function compositionsPage() {
  const duties = (senders) =>
    ['required', 'optional', 'guarded']
      .map((duty) => [duty, ['A', 'D', 'H', 'M', 'coast'].filter((type) => senders[type] === duty)])
      .filter(([, types]) => types.length > 0)
      .map(([duty, types]) => `${duty}: ${types.join(', ')}`)
      .join('; ');
  const rows = compositions.map((row) => [
    words(row.kind),
    words(row.format),
    list(row.categories),
    list(row.telecommands),
    row.order.map((field) => `${words(field)} ${fieldLengths[field] ?? ''}`.trim()).join(', '),
    row.characters,
    words(row.end),
    duties(row.senders),
    row.clause.replace(/^ITU-R M\.493-16 Annex 1 tables? /, ''),
  ]);
  page(
    'call-compositions',
    'Call compositions',
    'Which fields each kind of call is made of, in the order on the air. The number after a field counts its symbols on VHF; `characters` counts the information characters before the end of sequence, the format specifier twice. Equipment: A full, D fixed set of small craft, H hand-held, M man-overboard device, and coast stations; who is not named does not send it, and *guarded* means only past a guard against sending it by mistake. The last column names the table of ITU-R M.493-16 Annex 1.',
    'All rows are remembered from ITU-R M.493-16; several agree with Japanese restatements, see [deviations](../deviations.md). Which class of equipment may send what is remembered with little confidence: it gives hints and refuses nothing. How calls are made and read: [guide to calls](../guide/call.md).',
    table(
      [
        'kind',
        'format',
        'categories',
        'first telecommands',
        'fields',
        'characters',
        'end',
        'who sends it',
        'table',
      ],
      rows,
    ),
  );
}

function symbolsPage() {
  const shared = fileURLToPath(new URL('../shared/call/symbols.json', import.meta.url));
  const of = JSON.parse(readFileSync(shared, 'utf8')).tables;
  const tables = [
    ['Format specifiers', 'Whom a call is for and what shape it has.', of.formatSpecifiers],
    ['Categories', 'How important it is.', of.categories],
    ['Natures of distress', 'What has happened.', of.natures],
    [
      'First telecommands',
      'What the call asks for; also the type of communication that follows a distress alert.',
      of.firstTelecommands,
    ],
    ['Second telecommands', 'A closer word on the first.', of.secondTelecommands],
    [
      'Reasons for being unable to comply',
      'The second telecommands that may stand in such an answer.',
      of.reasons,
    ],
    ['Ends of sequence', 'Whether an answer is requested, is given, or neither.', of.endsOfSequence],
  ];
  page(
    'symbols',
    'Symbols',
    'Symbols 00 to 99 carry two digits each. Symbols 100 to 127 are service symbols; what one means depends on the field it is in. In telecommands and frequencies 126 means no information. A symbol that a table does not list is kept as `symbol-n` and never dropped.',
    'Rows up to 116 agree with Japan, Ministry of Posts and Telecommunications Notification 567 of 1990; the rest is remembered from ITU-R M.493. Doubtful rows stand in the [deviations](../deviations.md).',
    ...tables.map(
      ([title, meaning, rows]) =>
        `## ${title}\n\n${meaning}\n\n${table(
          ['symbol', 'name in this library', 'clause'],
          rows.map(({ symbol, name }) => [symbol, name, 'ITU-R M.493-16 Annex 1, table of symbols']),
        )}`,
    ),
  );
}

function timersPage() {
  const rows = timers.map(({ timer, least, most, unit, confidence, clause, meaning }) => [
    words(timer),
    `${least === most ? least : `${least} to ${most}`} ${unit}${most === 1 ? '' : 's'}${least === most ? '' : ', at random'}`,
    meaning,
    words(confidence),
    clause,
  ]);
  page(
    'timers',
    'Timers',
    'Every waiting time of the station, how sure it is and where it comes from. *Own choice* means that no source gives a value and this library had to pick one. What the station does with them: [guide to the station](../guide/station.md).',
    table(['timer', 'length', 'what is waited for', 'sure', 'clause'], rows),
  );
}

function transitionsPage() {
  const titles = {
    outgoing: 'A call this station sends',
    incoming: 'A call this station receives',
    'own-distress': 'Own distress',
    'heard-distress': 'The distress of another vessel',
  };
  const sections = Object.entries(titles).map(([procedure, title]) => {
    const phases = phaseTable().filter((row) => row.procedure === procedure);
    const rows = transitionTable().filter((row) => row.procedure === procedure);
    return [
      `## ${title}`,
      `<div class="drawn" tabindex="0" role="group" aria-label="${title}: diagram">\n{@include figures/station-${procedure}.svg}\n</div>`,
      `### ${title}: phases`,
      table(
        ['phase', 'what it means', 'what is waited for'],
        phases.map(({ phase, meaning, waits }) => [words(phase), meaning, list(waits)]),
      ),
      `### ${title}: transitions`,
      table(
        ['from', 'when this happens', 'and this holds', 'to', 'what is done', 'clause'],
        rows.map(({ from, on, when, to, actions, clause }) => [
          words(from),
          words(on),
          when === null ? null : words(when),
          words(to),
          list(actions),
          clause,
        ]),
      ),
    ].join('\n\n');
  });
  page(
    'station-transitions',
    'Station transitions',
    'The station runs on these tables: `step` does exactly what they list. Rows of the same phase and event are tried in order. In the diagrams a call goes down the page on the right and back up on the left; a dot ends it, a ring stays in the phase. The [guide to the station](../guide/station.md) tells how to use it.',
    ...sections,
  );
}

function issueCodesPage() {
  const codes = Object.entries(english.codes);
  const modules = [...new Set(codes.map(([, { module }]) => module))];
  page(
    'issue-codes',
    'Issue codes',
    'Every code that an issue, a notice or another text can carry. Codes are stable: branch on them. Texts may be reworded in any release; what stands in braces is a param. How results work: [guide to results](../guide/result.md).',
    ...modules.map(
      (each) =>
        `## ${capital(each)}\n\n${table(
          ['code', 'grade', 'text'],
          codes
            .filter(([, { module }]) => module === each)
            .map(([code, { grade }]) => [code, grade ?? '', [english.texts[code]].flat()[0]]),
        )}`,
    ),
  );
}

function capital(words) {
  return words[0].toUpperCase() + words.slice(1);
}

function faultsPage() {
  const serial = FAULTS.map(({ id, step, why, remedy }) => [words(id), step, why.message, remedy.message]);
  const network = NETWORK_FAULTS.map(({ id, certainty, why, remedy }) => [
    words(id),
    certainty,
    why.message,
    remedy.message,
  ]);
  page(
    'faults',
    'Faults between radio and display',
    'Why a display shows nothing, or the wrong thing, in the order in which to look. `findFaults` finds them in a serial log, `findNetworkFaults` in a log of the network; the recipe [pairing with a plotter](../recipe/plotter.md) and the guide [Network](../guide/network.md) show how.',
    'Source: common practice, where nothing else is said; the rules of the sentences are those of IEC 61162-1 as publicly restated, those of the messages the public list of parameter groups of IEC 61162-3.',
    `## On the serial cable\n\n${table(['fault', 'step', 'why it matters', 'what to do'], serial)}`,
    `## On the network\n\n${table(['fault', 'certainty', 'why it matters', 'what to do'], network)}`,
  );
}

function parameterGroupsPage() {
  const rows = [...PARAMETER_GROUPS]
    .sort((one, other) => one.pgn - other.pgn)
    .map(({ pgn, name, fast, priority, fields }) => [
      String(pgn),
      name,
      fast ? 'fast packet' : 'one frame',
      String(priority),
      fields
        .flatMap(([field, kind]) => (field === '' ? [] : [kind === 'repeated' ? `${field} …` : field]))
        .join(', '),
    ]);
  page(
    'parameter-groups',
    'Parameter groups of the network',
    'What the library reads of IEC 61162-3, by parameter group number, with the fields in wire order. The guide is [Network](../guide/network.md).',
    'Source: public list of parameter groups of IEC 61162-3, version 1.300 of 2009, and an open table that agrees with it (D-network-2).',
    table(['PGN', 'name', 'travels as', 'priority', 'fields'], rows),
  );
}

identityFormsPage();
administrationsPage();
channelsPage('channels-international', internationalPlan);
channelsPage('channels-united-states', unitedStatesPlan);
channelsPage('channels-canada', canadaPlan);
channelsPage('channels-united-kingdom', unitedKingdomPlan);
channelsPage('channels-netherlands-sea', netherlandsSeaPlan);
channelsPage('channels-netherlands-inland', netherlandsInlandPlan);
channelsPage('channels-sweden', swedenPlan);
compositionsPage();
symbolsPage();
timersPage();
transitionsPage();
issueCodesPage();
faultsPage();
parameterGroupsPage();
