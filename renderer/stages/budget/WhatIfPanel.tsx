import { limits, type Supposed, type Variable } from '../../../core/index.ts';
import { useStation } from '../../store/use-store.ts';
import { QuantityField } from '../../widgets/QuantityField.tsx';
import { variableText } from './suppositions.ts';
import './what-if.css';

interface Props {
  variables: readonly Variable[];
  supposed: Supposed;
  /** What is supposed, in words; empty while all is as drawn. */
  words: string;
  /** What follows from it besides figures. */
  consequence: string;
  onSuppose: (supposed: Supposed) => void;
}

const rows = { volts: limits.volts, watts: limits.watts, charge: limits.share } as const;
const labels = { volts: 'volts', watts: 'power', charge: 'charge' } as const;
// What no transmitter makes less of, and no supply more.
const least = { volts: 0, watts: 0.001, charge: 0 } as const;
const most = { volts: 1000, watts: 10_000, charge: 1 } as const;

/** Other figures to try: they change what the budget shows and nothing else. */
export function WhatIfPanel({ variables, supposed, words, consequence, onSuppose }: Props) {
  const sendShare = useStation((s) => s.plan.sendShare);
  const suppose = ({ figure, key }: Variable, value: number) =>
    onSuppose({ ...supposed, [figure]: { ...supposed[figure], [key]: value } });
  return (
    <section className={words ? 'what-if-panel on' : 'what-if-panel'} aria-labelledby="what-if-title">
      <div className="budget-part-head">
        <h3 id="what-if-title">What if</h3>
        <button type="button" className="button" disabled={words === ''} onClick={() => onSuppose({})}>
          As drawn
        </button>
      </div>
      <div className="what-if-fields">
        {variables.map((variable) => (
          <QuantityField
            key={variable.key}
            label={`${variable.name}, ${labels[variable.figure]}`}
            value={supposed[variable.figure]?.[variable.key] ?? variable.value}
            limit={rows[variable.figure]}
            format={(value) => variableText(variable, value)}
            least={least[variable.figure]}
            most={most[variable.figure]}
            onCommit={(value) => suppose(variable, value)}
          />
        ))}
        <QuantityField
          label="Time spent sending"
          value={supposed.sendShare ?? sendShare}
          limit={limits.share}
          format={(value) => variableText({ figure: 'charge' }, value)}
          onCommit={(value) => onSuppose({ ...supposed, sendShare: value })}
        />
      </div>
      <p className="what-if-words" role="status">
        {words || 'Try other figures: the drawing stays as it is.'}
        {words && <small>{consequence}</small>}
      </p>
    </section>
  );
}
