import { PARAMETER_GROUPS } from '../message/layout.ts';

/**
 * Other parameter groups that travel as fast packets, which no frame shows: from the public list of parameter
 * groups; what is not in the list is taken for a single frame. deviation: D-network-2
 */
const OTHERS: readonly number[] = [
  126208, 126720, 126983, 126984, 126985, 126986, 126987, 126988, 126998, 127237, 127489, 127490, 127491,
  127494, 127495, 127496, 127497, 127498, 127503, 127504, 127506, 127507, 127509, 127510, 127511, 127512,
  127513, 127514, 128275, 128520, 129045, 129301, 129302, 129538, 129540, 129541, 129542, 129545, 129547,
  129549, 129550, 129551, 129556, 129792, 129795, 129796, 129800, 129803, 129804, 129805, 129806, 129807,
  130052, 130053, 130054, 130060, 130061, 130064, 130065, 130066, 130067, 130068, 130069, 130070, 130071,
  130072, 130073, 130320, 130321, 130322, 130323, 130324, 130567, 130577, 130578,
];
const FAST: ReadonlySet<number> = /* @__PURE__ */ new Set([
  ...OTHERS,
  ...PARAMETER_GROUPS.filter(({ fast }) => fast).map(({ pgn }) => pgn),
]);
/** Proprietary groups of this range are all fast packets. */
const FIRST_PROPRIETARY_FAST = 130816;

/** Whether the messages of a parameter group are fast packets. */
export function isFast(pgn: number): boolean {
  return FAST.has(pgn) || (pgn >= FIRST_PROPRIETARY_FAST && pgn <= 131071);
}
