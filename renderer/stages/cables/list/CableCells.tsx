import { type Cable, type CableRow, formatLength, limits, type RingColour, ringName } from '../../../../core/index.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { select, showPlaces } from '../../../store/view.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { TextField } from '../../../widgets/TextField.tsx';
import { statuses } from '../class-names.ts';
import { openCableRow } from '../lists-view.ts';
import { Rings } from '../Rings.tsx';
import { renumber } from '../renumber.ts';

interface Props {
  row: CableRow;
  chosen: readonly string[];
  isOpen: boolean;
}

/** The cells of one cable: what is short is edited where it stands, the rest in the row that opens. */
export function CableCells({ row, chosen, isOpen }: Props) {
  const units = useStation((s) => s.settings.units ?? 'metric');
  const { id, number } = row;
  const set = (fields: Partial<Omit<Cable, 'id'>>) => change({ type: 'updateCable', id, set: fields });
  const isChosen = chosen.includes(id);
  const toggle = () => select({ cables: isChosen ? chosen.filter((other) => other !== id) : [...chosen, id] });
  const length = (metres: number) => formatLength(metres, units);
  return (
    <>
      <td className="screen-only">
        <input type="checkbox" aria-label={`Choose ${number}`} checked={isChosen} onChange={toggle} />
      </td>
      <th scope="row" className="number-cell">
        <Cell text={number}>
          <TextField label={`Number of ${number}`} value={number} onCommit={(text) => renumber(row, text)} figures />
        </Cell>
        <Rings rings={row.rings} />
        {row.numberLocked && <small>locked</small>}
      </th>
      <td>
        {row.from}
        <small>{plugWords(row.fromPlug, row.fromRing)}</small>
      </td>
      <td>
        {row.to}
        <small>{plugWords(row.toPlug, row.toRing)}</small>
      </td>
      <td>
        {row.kind}
        <small>{row.conductors}</small>
      </td>
      <td className="number">
        <Cell text={length(row.lengthM)}>
          <QuantityField
            label={`Length of ${number}`}
            value={row.lengthM}
            limit={limits.metres}
            format={length}
            onCommit={(lengthM) => set({ lengthM })}
          />
        </Cell>
      </td>
      <td>{row.fuse || '–'}</td>
      <td className="status">
        <Cell text={row.status}>
          <SelectField
            label={`Status of ${number}`}
            value={statuses.find(({ label }) => label === row.status)?.id ?? 'toMake'}
            options={statuses}
            onChoose={(status) => set({ status: status as NonNullable<Cable['status']> })}
          />
        </Cell>
      </td>
      <td className="remarks">
        <Cell text={row.note}>
          <TextField
            label={`Note on ${number}`}
            value={row.note}
            sort="text"
            onCommit={(note) => {
              set({ note: note.trim() === '' ? undefined : note } as Partial<Cable>);
              return undefined;
            }}
          />
        </Cell>
        {remarksOf(row).map((remark) => (
          <span key={remark}>{remark}</span>
        ))}
      </td>
      <td className="screen-only">
        <button
          type="button"
          className="open-button"
          aria-expanded={isOpen}
          aria-label={`All of ${number}`}
          onClick={() => {
            openCableRow(isOpen ? null : id);
            if (!isOpen) showPlaces([{ cable: id }]);
          }}
        >
          {isOpen ? '▾' : '▸'}
        </button>
      </td>
    </>
  );
}

/** A field on screen, its text on paper. */
function Cell({ text, children }: { text: string; children: React.ReactNode }) {
  return (
    <>
      <span className="print-text">{text}</span>
      <div className="cell-field">{children}</div>
    </>
  );
}

/** A plug and the ring on it, which is that of its jack. */
const plugWords = (plug: string, ring: RingColour | undefined): string =>
  ring ? `${plug}, ring ${ringName(ring)}` : plug;

const remarksOf = (row: CableRow): string[] =>
  [
    row.wiring && `Wired ${row.wiring}`,
    row.adapters && `With ${row.adapters}`,
    row.hookups.length > 0 && row.hookups.join(', '),
  ].filter((text): text is string => Boolean(text));
