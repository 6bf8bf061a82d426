import { useStore } from 'zustand';
import { Tabs } from '../../widgets/Tabs.tsx';
import '../draw/details.css';
import '../tables.css';
import { BuyList } from './BuyList.tsx';
import './cables.css';
import { FlagsPart } from './flags/FlagsPart.tsx';
import { CableList } from './list/CableList.tsx';
import { type ListTab, listsView, listTabs, showTab } from './lists-view.ts';
import { MakeList } from './make/MakeList.tsx';

const names: Record<ListTab, string> = { list: 'Cable list', make: 'To make', buy: 'To buy', flags: 'Flags' };
const parts = { list: CableList, make: MakeList, buy: BuyList, flags: FlagsPart };

/** All about the cables as things: the list, what to make, what to buy, and their flags. */
export function CableSheet() {
  const tab = useStore(listsView, (v) => v.tab);
  const Part = parts[tab];
  return (
    <aside className="sheet" aria-label="Cables">
      <Tabs label="Lists" prefix="cables" tabs={listTabs} tab={tab} nameOf={(id) => names[id]} onShow={showTab} />
      <div role="tabpanel" id="cables-part" aria-labelledby={`cables-tab-${tab}`}>
        <Part />
      </div>
    </aside>
  );
}
