import { findChannel } from 'seahail/channel';
import { internationalPlan } from 'seahail/channel/international';
import { unitedStatesPlan } from 'seahail/channel/united-states';
import { type Figure, ratioOf } from './ratio.ts';

export function channelFigures(): Figure[] {
  const plans = [internationalPlan, unitedStatesPlan];
  const maps = plans.map(
    ({ channels }) =>
      new Map(channels.flatMap((each) => [each.designator, ...each.aliases].map((name) => [name, each]))),
  );
  const names = plans.map(({ channels }) => channels.map(({ designator }) => designator));
  const spoken = names.map((list) => list.map((name) => `ch ${name.toLowerCase()}`));

  const find = (lists: readonly string[][]) => () => {
    let sum = 0;
    lists.forEach((list, place) => {
      const plan = plans[place] as (typeof plans)[number];
      for (const name of list) {
        const found = findChannel(plan, name);
        if (found.ok) sum += found.value.shipKHz ?? 1;
      }
    });
    return sum;
  };
  const look = () => {
    let sum = 0;
    names.forEach((list, place) => {
      const map = maps[place] as (typeof maps)[number];
      for (const name of list) {
        const found = map.get(name);
        if (found) sum += found.shipKHz ?? 1;
      }
    });
    return sum;
  };
  return [
    {
      what: 'findChannel, as the plan writes it',
      beside: 'a look-up in a Map',
      ratio: ratioOf({ subject: find(names), yardstick: look }),
      goal: 2,
    },
    {
      what: 'findChannel, as people write it',
      beside: 'a look-up in a Map',
      ratio: ratioOf({ subject: find(spoken), yardstick: look }),
    },
  ];
}
