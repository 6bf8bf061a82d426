import { Fragment } from 'react';
import { useStore } from 'zustand';
import {
  type BuyGroup,
  type BuyRow,
  buyGroups,
  buyTable,
  limits,
  usualAllowance,
  whatToBuy,
} from '../../../core/index.ts';
import { PrintFrame } from '../../print/PrintFrame.tsx';
import { change } from '../../store/document.ts';
import { useStation } from '../../store/use-store.ts';
import { QuantityField } from '../../widgets/QuantityField.tsx';
import { LeaveOutDone } from './LeaveOutDone.tsx';
import { ListHead } from './ListHead.tsx';
import { listsView } from './lists-view.ts';

const groupNames: Record<BuyGroup, string> = {
  cable: 'Cable by the metre',
  plug: 'Plugs and terminals',
  adapter: 'Adapters',
  fuse: 'Fuses, one of each to spare',
  holder: 'Fuse holders',
  sleeve: 'Heat-shrink sleeve',
  ring: 'Colour rings for jacks and plugs',
  'ready-made': 'Ready-made cables',
};

/** What to buy for all cables, or for those that are not made yet. */
export function BuyList() {
  const station = useStation();
  const leaveOut = useStore(listsView, (v) => v.leaveOutDone);
  const rows = whatToBuy(station, { leaveOutDone: leaveOut });
  return (
    <>
      <ListHead title="What to buy" what="the shopping list" file="buy" tableOf={() => buyTable(rows)} />
      <div className="list-filter">
        <Allowance />
        <LeaveOutDone />
      </div>
      <PrintFrame title="What to buy" of={leaveOut ? 'Without cables that are made' : ''}>
        {rows.length === 0 ? <p className="soft">Nothing is left to buy.</p> : <Table rows={rows} />}
      </PrintFrame>
    </>
  );
}

function Table({ rows }: { rows: readonly BuyRow[] }) {
  const groups = buyGroups.map((group) => ({ group, own: rows.filter((row) => row.group === group) }));
  return (
    <table className="table">
      <caption className="sr-only">What to buy</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col" className="number">
            Buy
          </th>
          <th scope="col" className="number">
            Used
          </th>
          <th scope="col">For</th>
        </tr>
      </thead>
      {groups.map(({ group, own }) => (
        <Fragment key={group}>
          {own.length > 0 && (
            <tbody>
              <tr className="group-row">
                <th scope="rowgroup" colSpan={4}>
                  {groupNames[group]}
                </th>
              </tr>
              {own.map((row) => (
                <tr key={row.what}>
                  <th scope="row">{row.what}</th>
                  <td className="number">{amount(row.count, row)}</td>
                  <td className="number">{amount(row.used, row)}</td>
                  <td>{row.for.join(', ')}</td>
                </tr>
              ))}
            </tbody>
          )}
        </Fragment>
      ))}
    </table>
  );
}

const amount = (count: number, { unit }: BuyRow): string => (unit === 'm' ? `${count} m` : String(count));

function Allowance() {
  const settings = useStation((s) => s.settings);
  return (
    <QuantityField
      label="Cable to spare, %"
      value={Number(((settings.cableAllowance ?? usualAllowance) * 100).toFixed(1))}
      limit={limits.number}
      least={0}
      most={100}
      onCommit={(percent) =>
        change({ type: 'describe', set: { settings: { ...settings, cableAllowance: percent / 100 } } })
      }
    />
  );
}
