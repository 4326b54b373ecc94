import { parseIdentity } from 'seahail/identity';
import { type Figure, ratioOf } from './ratio.ts';

/** Invented numbers of the forms most often met, as machines write them. */
const PLAIN = [
  '232999871',
  '232999142',
  '232999563',
  '232999218',
  '823299904',
  '023299905',
  '002329990',
  '338999123',
  '992329991',
  '982329992',
  '970999123',
  '111232999',
];

/** The same as people write them, and what they write by mistake. */
const MESSY = [
  '232 999 871',
  'MMSI 232999142',
  ' 232999563',
  '232-999-218',
  '823.299.904',
  "'023299905",
  'mmsi: 00 232 9990',
  '2329990',
  '2329998710',
  '23299987',
  '２３２９９９８７１',
  '232999871 / 232999142',
];

export function identityFigures(): Figure[] {
  const bare = (list: readonly string[]) => () => {
    let count = 0;
    for (const text of list) if (/^\d{9}$/.test(text)) count++;
    return count;
  };
  const parse = (list: readonly string[]) => () => {
    let count = 0;
    for (const text of list) if (parseIdentity(text).ok) count++;
    return count;
  };
  return [
    {
      what: 'parseIdentity, nine plain digits',
      beside: 'a bare regular expression',
      ratio: ratioOf({ subject: parse(PLAIN), yardstick: bare(PLAIN) }),
      goal: 8,
    },
    {
      what: 'parseIdentity, as people write them',
      beside: 'a bare regular expression',
      ratio: ratioOf({ subject: parse(MESSY), yardstick: bare(MESSY) }),
    },
  ];
}
