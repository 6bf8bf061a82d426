import { useMemo, useState } from 'react';
import {
  findNewPartners,
  findPartners,
  type NewPartner,
  type PortRef,
  portName,
  proposalWords,
  type Station,
} from '../../../core/index.ts';
import { onGrid } from '../../canvas/cards/card-size.ts';
import { drawingView } from '../../canvas/drawing-view.ts';
import { finishAtNewUnit, finishLaying, giveUp, useLaying } from '../../canvas/laying/laying.ts';
import { useForetold } from '../../canvas/laying/use-foretold.ts';
import { sizeOf } from '../../canvas/layout.ts';
import type { Point } from '../../canvas/routing/geometry.ts';
import { allKinds } from '../../store/place-kind.ts';
import { useStation } from '../../store/use-store.ts';
import { type Choice, ChoiceDialog, hasWords } from '../../widgets/ChoiceDialog.tsx';

/** What a port could be joined to: ports of the drawing, likeliest first, and units of the shelf that could be set down. */
export function JoinDialog() {
  const from = useLaying((s) => s.from);
  const asked = useLaying((s) => s.asked);
  return from && asked && <Open key={`${from.unit}.${from.port}`} from={from} at={asked.at} />;
}

function Open({ from, at }: { from: PortRef; at: Point | null }) {
  const moving = useLaying((s) => s.moved !== null);
  const station = useStation();
  // Once, not for every letter that is typed.
  const all = useMemo(() => allChoices(station, from, moving, at), [station, from, moving, at]);
  const [here, setHere] = useState<string | null>(null);
  const foretold = useForetold(all.find((c) => c.key === here)?.to ?? null);
  return (
    <ChoiceDialog
      title={`Join ${portName(station, from)} to`}
      fieldLabel={`Join ${portName(station, from)} to`}
      placeholder={`Join ${portName(station, from)} to…`}
      choicesFor={(text) => all.filter(({ what, label }) => hasWords(`${what} ${label}`, text)).slice(0, most)}
      noneText="Nothing to join it to has these words."
      onClose={giveUp}
      onHere={setHere}
      hereText={foretold}
    />
  );
}

/** A choice with the port of the drawing that it is, if it is one. */
interface PartnerChoice extends Choice {
  readonly to?: PortRef;
}

const most = 60;
/** So many of the likeliest say which cable it would be. */
const proposed = 12;

const words = { mates: 'fits', adapter: 'by an adapter', misfit: 'should not', none: 'does not fit' };

function allChoices(station: Station, from: PortRef, moving: boolean, at: Point | null): PartnerChoice[] {
  const ports = portChoices(station, from, moving);
  const units = moving ? [] : unitChoices(station, from, at);
  const good = ports.filter((c) => !c.dim);
  const rest = ports.filter((c) => c.dim);
  return at ? [...units, ...good, ...rest] : [...good, ...units, ...rest];
}

function portChoices(station: Station, from: PortRef, moving: boolean): PartnerChoice[] {
  return findPartners(station, from).map(({ ref, verdict, taken }, i) => {
    const fits = verdict.fit === 'mates';
    const proposal = i < proposed && fits && !moving ? proposalWords(station, from, ref) : '';
    const notes = [taken ? 'has a cable' : '', verdict.why, proposal];
    return {
      key: `${ref.unit}.${ref.port}`,
      what: words[verdict.fit],
      label: portName(station, ref),
      note: notes.filter(Boolean).join('; '),
      dim: !fits,
      to: ref,
      choose: () => finishLaying(ref),
    };
  });
}

const unitChoices = (station: Station, from: PortRef, at: Point | null): Choice[] =>
  findNewPartners(station, from, allKinds()).map((partner) => ({
    key: `new ${partner.kind.id}`,
    what: 'new unit',
    label: partner.kind.kind.name,
    note: partner.port.label ? `at its port ${partner.port.label}` : '',
    choose: () => finishAtNewUnit(partner, placeFor(partner, at)),
  }));

/** With its port where the cable was dropped; else a free place in view. */
function placeFor({ kind: { kind }, port }: NewPartner, at: Point | null): Point {
  const size = sizeOf(kind, kind.name);
  const spot = size.ports.find((p) => p.id === port.id);
  return at && spot ? onGrid({ x: at.x - spot.x, y: at.y - spot.y }) : drawingView.freePlace(size.width, size.height);
}
