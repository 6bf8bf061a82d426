import { type FlagSheet, limits } from '../../../../core/index.ts';
import { setFlagSheet } from '../../../print/flags/flag-sheet-store.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';

type NumberName = {
  [K in keyof FlagSheet]: FlagSheet[K] extends number ? K : never;
}[keyof FlagSheet];

const styles = [
  { id: 'label', label: 'on labels' },
  { id: 'wrap', label: 'folded labels' },
  { id: 'strip', label: 'on strips' },
];
const papers = [
  { id: 'a4', label: 'A4' },
  { id: 'letter', label: 'Letter' },
  { id: 'own', label: 'other' },
];

const margins: readonly [NumberName, string][] = [
  ['topMm', 'Top margin, mm'],
  ['bottomMm', 'Bottom margin, mm'],
  ['leftMm', 'Left margin, mm'],
  ['rightMm', 'Right margin, mm'],
  ['gapXMm', 'Gap across, mm'],
  ['gapYMm', 'Gap down, mm'],
];

/** The sheet that flags are printed on. */
export function FlagSettings({ sheet }: { sheet: FlagSheet }) {
  return (
    <fieldset className="flag-settings" aria-label="Sheet of flags">
      <SelectField
        label="Flags"
        value={sheet.style}
        options={styles}
        onChoose={(style) => setFlagSheet({ style: style as FlagSheet['style'] })}
      />
      <SelectField
        label="Page"
        value={sheet.page}
        options={papers}
        onChoose={(page) => setFlagSheet({ page: page as FlagSheet['page'] })}
      />
      {sheet.page === 'own' && (
        <>
          <Figure sheet={sheet} name="ownWidthMm" label="Page width, mm" least={20} most={1000} />
          <Figure sheet={sheet} name="ownHeightMm" label="Page height, mm" least={20} most={1000} />
        </>
      )}
      {sheet.style === 'strip' ? (
        <>
          <Figure sheet={sheet} name="stripHeightMm" label="Strip height, mm" least={4} most={100} />
          <Figure sheet={sheet} name="stripLengthMm" label="Strip length, mm" least={10} most={500} />
        </>
      ) : (
        <>
          <Figure sheet={sheet} name="columns" label="Columns" least={1} most={60} whole />
          <Figure sheet={sheet} name="rows" label="Rows" least={1} most={100} whole />
        </>
      )}
      {margins.map(([name, label]) => (
        <Figure key={name} sheet={sheet} name={name} label={label} least={0} most={500} />
      ))}
      {sheet.style === 'wrap' && (
        <>
          <Figure sheet={sheet} name="wrapMm" label="Round the cable, mm" least={0} most={200} />
          <Check label="Text on both halves" checked={sheet.twice} onChange={(twice) => setFlagSheet({ twice })} />
        </>
      )}
      <Figure sheet={sheet} name="startAt" label="First free label" least={1} most={2000} whole />
      <Figure sheet={sheet} name="largestPt" label="Largest type, pt" least={3} most={40} />
      <Figure sheet={sheet} name="smallestPt" label="Smallest type, pt" least={3} most={40} />
      <Check label="Colour rings" checked={sheet.rings} onChange={(rings) => setFlagSheet({ rings })} />
    </fieldset>
  );
}

interface FigureProps {
  sheet: FlagSheet;
  name: NumberName;
  label: string;
  least: number;
  most: number;
  whole?: boolean;
}

function Figure({ sheet, name, label, least, most, whole = false }: FigureProps) {
  return (
    <QuantityField
      label={label}
      value={sheet[name]}
      limit={limits.number}
      least={least}
      most={most}
      onCommit={(value) => setFlagSheet({ [name]: whole ? Math.round(value) : value })}
    />
  );
}

interface CheckProps {
  label: string;
  checked: boolean;
  onChange: (checked: boolean) => void;
}

const Check = ({ label, checked, onChange }: CheckProps) => (
  <label className="check-line">
    <input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
    {label}
  </label>
);
