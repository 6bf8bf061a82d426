import { useStore } from 'zustand';
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
      <Tabs tab={tab} />
      <div role="tabpanel" id="cables-part" aria-labelledby={`cables-tab-${tab}`}>
        <Part />
      </div>
    </aside>
  );
}

function Tabs({ tab }: { tab: ListTab }) {
  const onKeyDown = (event: React.KeyboardEvent<HTMLElement>) => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    const to = step === undefined ? { Home: 0, End: listTabs.length - 1 }[event.key] : listTabs.indexOf(tab) + step;
    const next = to === undefined ? undefined : listTabs[(to + listTabs.length) % listTabs.length];
    if (!next) return;
    event.preventDefault();
    showTab(next);
    event.currentTarget.querySelector<HTMLElement>(`#cables-tab-${next}`)?.focus();
  };
  return (
    <div className="tabs" role="tablist" aria-label="Lists" onKeyDown={onKeyDown}>
      {listTabs.map((id) => (
        <button
          key={id}
          id={`cables-tab-${id}`}
          type="button"
          role="tab"
          aria-selected={id === tab}
          aria-controls="cables-part"
          tabIndex={id === tab ? 0 : -1}
          onClick={() => showTab(id)}
        >
          {names[id]}
        </button>
      ))}
    </div>
  );
}
