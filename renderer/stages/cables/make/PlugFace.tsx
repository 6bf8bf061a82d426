import type { Connector, PinPlan } from '../../../../core/index.ts';
import { pinPlanOf } from '../../../../core/index.ts';

const pxPerMm = 9;

/** A multi-way plug from the side where the wires are soldered, its pins numbered. */
export function PlugFace({ connector, at }: { connector: Connector; at: string }) {
  const plan = pinPlanOf(connector);
  const [width, height] = [plan.widthMm + 2, plan.heightMm + 2];
  const radius = plan.outline === 'modular' ? 0.45 : 1;
  return (
    <figure className="plug-face">
      <svg
        viewBox={`${-width / 2} ${-height / 2} ${width} ${height}`}
        width={width * pxPerMm}
        height={height * pxPerMm}
        role="img"
        aria-label={`${connector.name}, ${plan.view}`}
      >
        <path className="plug-outline" d={outlineOf(plan)} />
        {plan.pins.map((pin) => (
          <g key={pin.id} transform={`translate(${pin.x} ${pin.y})`}>
            {plan.outline === 'modular' ? (
              <path className="plug-pin" d="M-0.35 -2.6V0.4H0.35V-2.6Z" />
            ) : (
              <circle className="plug-pin" r={radius} />
            )}
            <text className="plug-number" y={plan.outline === 'modular' ? 2 : 0.42} textAnchor="middle">
              {pin.id.replace(/^pin/, '')}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        {connector.name} at {at}, {plan.view}. Source: {plan.source}.
      </figcaption>
    </figure>
  );
}

function outlineOf({ outline, widthMm, heightMm, key }: PinPlan): string {
  const [x, y] = [widthMm / 2, heightMm / 2];
  if (outline === 'round') {
    const side = key === 'bottom' ? 1 : -1;
    const notch = key ? `M-1 ${side * y * 0.98}V${side * (y - 1.2)}H1V${side * y * 0.98}` : '';
    return `M${-x} 0A${x} ${x} 0 1 1 ${x} 0A${x} ${x} 0 1 1 ${-x} 0Z${notch}`;
  }
  // A D is narrower below.
  if (outline === 'd') return `M${-x} ${-y}H${x}L${x - 1.5} ${y}H${-x + 1.5}Z`;
  if (outline === 'modular') return `M${-x} ${-y}H${x}V${y}H${-x}ZM-3 ${y - 4}H3V${y}H-3Z`;
  return `M${-x} ${-y}H${x}V${y}H${-x}Z`;
}
