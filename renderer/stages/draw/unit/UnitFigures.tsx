import {
  type ElementFigure,
  elementFigures,
  elementTitle,
  formatPercent,
  hasTypicalFigures,
  kindOf,
  type Unit,
  type UnitKind,
} from '../../../../core/index.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';

/** The figures inside a unit: typical ones of the shelf until the user enters or confirms their own. */
export function UnitFigures({ unit, kind }: { unit: Unit; kind: UnitKind }) {
  const own = useStation((s) => kindOf(s, unit));
  const shownElements = own.elements
    .map((element) => ({ element, figures: elementFigures(own, element) }))
    .filter((e) => e.figures.length > 0);
  if (shownElements.length === 0) return null;
  const typical = hasTypicalFigures(kind);
  const confirmed = unit.confirmed === true;
  const confirm = () => change({ type: 'updateUnit', id: unit.id, set: { confirmed: confirmed ? undefined : true } });
  return (
    <section>
      <h3>Figures</h3>
      <p className="soft small">
        {!typical
          ? `The figures of this kind are from here: ${kind.source}.`
          : confirmed
            ? 'You have said that these are your unit’s figures.'
            : 'Typical figures are the shelf’s. Enter what your unit’s manual says.'}
      </p>
      {shownElements.map(({ element, figures }) => (
        <fieldset key={element.id} className="figures">
          <legend>{elementTitle(kind, element)}</legend>
          {figures.map((figure) => (
            <Figure key={figure.key} unit={unit} figure={figure} confirmed={confirmed || !typical} />
          ))}
        </fieldset>
      ))}
      {typical && (
        <button type="button" className="button" onClick={confirm}>
          {confirmed ? 'Mark as typical again' : 'These are my unit’s figures'}
        </button>
      )}
    </section>
  );
}

interface FigureProps {
  unit: Unit;
  figure: ElementFigure;
  confirmed: boolean;
}

function Figure({ unit, figure, confirmed }: FigureProps) {
  const { key, label, limit, value } = figure;
  const isOwn = unit.overrides?.[key] !== undefined;
  const set = (overrides: Record<string, number>) =>
    change({
      type: 'updateUnit',
      id: unit.id,
      set: { overrides: Object.keys(overrides).length > 0 ? overrides : undefined },
    });
  const takeBack = () => set(Object.fromEntries(Object.entries(unit.overrides ?? {}).filter(([k]) => k !== key)));
  const tag = isOwn ? (
    <button
      type="button"
      className="tag own"
      onClick={takeBack}
      title="Go back to the shelf’s figure"
      aria-label={`${label}: back to the shelf’s figure`}
    >
      own ✕
    </button>
  ) : (
    !confirmed && <span className="tag">typical</span>
  );
  return (
    <QuantityField
      label={label}
      value={value}
      limit={limit}
      {...(limit.unit === 'share' && { format: formatPercent })}
      onCommit={(n) => set({ ...unit.overrides, [key]: n })}
      after={tag}
    />
  );
}
