import { asPeopleCount } from '../../quantity/as-people-count.ts';
import { type BuyGroup, type BuyRow, buyGroups } from './buy-row.ts';

interface Item {
  readonly group: BuyGroup;
  readonly what: string;
  used: number;
  readonly for: string[];
}

/** What is used so far, by group and name. */
export type Basket = Map<string, Item>;

/** Puts so much of something into the basket, for a cable or a unit. */
export function fill(basket: Basket, group: BuyGroup, what: string, amount: number, whom: string) {
  const key = `${group} ${what}`;
  const item = basket.get(key) ?? { group, what, used: 0, for: [] };
  item.used += amount;
  if (!item.for.includes(whom)) item.for.push(whom);
  basket.set(key, item);
}

/** The basket as lines in the order of the groups, then by name: metres with the allowance, one fuse of each to spare. */
export function rowsOf(basket: Basket, allowance: number): BuyRow[] {
  const rows = [...basket.values()].map((item): BuyRow => {
    const unit = item.group === 'cable' || item.group === 'sleeve' ? 'm' : 'pieces';
    const used = unit === 'm' ? Math.round(item.used * 1000) / 1000 : item.used;
    const spare = item.group === 'fuse' ? 1 : 0;
    return { ...item, used, unit, count: unit === 'm' ? upToTenth(used * (1 + allowance)) : used + spare };
  });
  const rank = ({ group }: BuyRow) => buyGroups.indexOf(group);
  return rows.sort((a, b) => rank(a) - rank(b) || asPeopleCount(a.what, b.what));
}

/** To the millimetre first: a tenth of 3 m more is 3.3 m, not 3.3000000000000003 m. */
const upToTenth = (metres: number): number => Math.ceil(Math.round(metres * 1000) / 100) / 10;
