import { formatDbm, formatLoss, formatWatts, type RfReport } from '../../../../core/index.ts';
import { RfChart } from '../charts/RfChart.tsx';
import { ExportTable } from '../ExportTable.tsx';
import { BudgetTable } from './BudgetTable.tsx';
import { Figure } from './Figure.tsx';
import { PlaceLink } from './PlaceLink.tsx';

interface Props {
  rf: RfReport;
  other: RfReport | undefined;
}

const words: Record<RfReport['staircase'][number]['kind'], string> = {
  transmitter: 'transmitter',
  mismatch: 'by the SWR',
  cable: 'cable',
  unit: 'unit',
  end: 'where it ends',
};

/** Where a transmitter's power goes: the staircase, and the same as a table. */
export function RfTable({ rf, other }: Props) {
  const same = other?.staircase.length === rf.staircase.length ? other : undefined;
  return (
    <>
      <RfChart rf={rf} other={other} />
      <BudgetTable
        title={`RF levels of ${rf.transmitter}, ${rf.controlName} pressed`}
        columns={['After', 'Loses', 'Level', 'Power', 'What']}
        tools={<ExportTable name="rf" />}
      >
        {rf.staircase.map((step, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a unit can be met twice
          <tr key={i}>
            <th scope="row">{step.at ? <PlaceLink places={[step.at]}>{step.name}</PlaceLink> : step.name}</th>
            <td className="number">{i === 0 ? '–' : formatLoss(step.lossDb)}</td>
            <Figure value={step.dbm} whatIf={same?.staircase[i]?.dbm} format={formatDbm} />
            <Figure value={step.watts} whatIf={same?.staircase[i]?.watts} format={formatWatts} />
            <td>{words[step.kind]}</td>
          </tr>
        ))}
      </BudgetTable>
    </>
  );
}
