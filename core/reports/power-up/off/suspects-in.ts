import { formatOhms } from '../../../quantity/format.ts';
import type { Place } from '../../../station/place.ts';
import { applyFailure } from '../../../whatif/apply-failure.ts';
import type { Failure } from '../../../whatif/failure.ts';
import { listFailures } from '../../../whatif/list-failures.ts';
import { circuitOf, dcSolverOf, isSameDrawing, type Setup, seenIn, seenWith } from '../setup.ts';
import { inWorkings } from '../workings.ts';
import { actSuspects } from './act-suspects.ts';
import { heldSuspects, leadSuspects } from './lead-suspects.ts';
import type { Suspect } from './suspect.ts';

const failuresIn = inWorkings(
  (setup) => new Map(listFailures(setup.station, circuitOf(setup)).map((f) => [f.id, f])),
  isSameDrawing,
);

const ranks: Record<Failure['kind'], number> = { opens: 0, losesPower: 2, staysOn: 3, staysOff: 3, highVolts: 4 };

/**
 * All that is tried for a reading in this setup: single failures, swapped leads, shorted leads, a control held down, and
 * plugs at the places of the reading that went into another jack.
 */
export function suspectsIn(setup: Setup, places: readonly Place[]): Suspect[] {
  return [...failureSuspects(setup), ...leadSuspects(setup), ...heldSuspects(setup), ...actSuspects(setup, places)];
}

function failureSuspects(setup: Setup): Suspect[] {
  return [...failuresIn(setup).values()].map(({ id, text, at, kind, parts }): Suspect => {
    const isFuse = kind === 'opens' && circuitOf(setup).parts.some((p, i) => parts.includes(i) && 'fuse' in p);
    return {
      id,
      text,
      at,
      rank: isFuse ? -1.5 : ranks[kind],
      see: (other) => {
        const failure = failuresIn(other).get(id);
        return failure ? seenWith(other, applyFailure(circuitOf(other), wholeRow(failure))) : null;
      },
      ...(kind === 'opens' && { withOhms: (ohms: number) => badJoint({ id, text, at }, ohms) }),
    };
  });
}

/** All that may have opened in a row: a lead on the bench is measured without the joints at its ends. */
const wholeRow = (failure: Failure): Failure =>
  failure.alike.length > 0 ? { ...failure, parts: failure.alike } : failure;

/** The same lead with a worn or dirty joint; who is on is taken to stay as it is. */
function badJoint({ id, text, at }: Pick<Suspect, 'id' | 'text' | 'at'>, ohms: number): Suspect {
  return {
    id: `joint:${id}`,
    text: `${text.replace(/ opens.*$/, '')} has a bad joint, of about ${formatOhms(Number(ohms.toPrecision(2)))}`,
    at,
    rank: 1,
    see: (setup) => {
      const part = failuresIn(setup).get(id)?.parts[0];
      const seen = seenIn(setup);
      if (part === undefined || !seen.reach) return null;
      const parts = seen.circuit.parts.map((p, i) =>
        i === part && p.kind === 'resistor' ? { ...p, ohms: p.ohms + ohms } : p,
      );
      const circuit = { ...seen.circuit, parts };
      const dc = dcSolverOf(setup, circuit).solve(seen.on, seen.open);
      return { ...seen, circuit, dc, reach: { ...seen.reach, dc } };
    },
  };
}
