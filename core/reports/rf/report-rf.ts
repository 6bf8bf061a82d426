import type { RfEdge } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { wattsFromDbm } from '../../quantity/decibel.ts';
import type { Chain, ChainEnd } from '../../rf/chain.ts';
import { categoryALimit, judgeHarmonic, part97Limit } from '../../rf/harmonics.ts';
import { type ChainHarmonic, harmonicsAlong } from '../../rf/harmonics-along.ts';
import { keepAway } from '../../rf/keep-away.ts';
import { chainOf } from '../../rf/solve-chain.ts';
import type { Facts, TriedHookup } from '../../rules/rule.ts';
import { findCable, unitName } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { controlKey, controlName, rfPortName } from '../../trial/names.ts';
import { regionsOf } from '../../trial/rf/regions.ts';
import type { RfEnd, RfHarmonic, RfReport, RfStage } from './rf-report.ts';
import { rfStaircase } from './rf-staircase.ts';

/** For each transmitter that a control makes send, in each hook-up: its way to where its power ends, port by port. */
export function reportRf({ station, hookups }: Facts): RfReport[] {
  return hookups.flatMap((tried) =>
    regionsOf(tried.trial).flatMap(({ number }) =>
      instantsOfRegion(tried.trial, number).flatMap(({ name, reach, keyDown }) => {
        if (name !== 'sending' || !keyDown || keyDown.controls.length > 1) return [];
        return reach.rf.at(number).fields.map((field): RfReport => {
          const chain = chainOf(tried.trial.circuit, reach.on, field);
          return {
            ...chainReport(station, tried, chain),
            control: controlKey(tried.trial.circuit, keyDown),
            controlName: controlName(station, tried.trial.circuit, keyDown),
          };
        });
      }),
    ),
  );
}

function chainReport(
  station: Station,
  { hookup, trial }: TriedHookup,
  chain: Chain,
): Omit<RfReport, 'control' | 'controlName'> {
  const source = trial.circuit.rf.sources[chain.source];
  const { hertz } = trial.circuit.rf;
  const harmonics = harmonicsAlong(chain, hertz, source?.spec.harmonicsDbc);
  return {
    hookup: hookup.id,
    hookupName: hookup.name,
    transmitter: unitName(station, source?.unit ?? ''),
    hertz,
    watts: chain.sourceWatts,
    mostWatts: source?.spec.maxDbm === undefined ? null : wattsFromDbm(source.spec.maxDbm),
    stages: chain.ports.map((at) => stageOf(station, trial, chain, at)),
    ends: chain.ends.map((end) => endOf(station, trial, end, harmonics.get(end.load.port) ?? [])),
    staircase: rfStaircase(station, trial.circuit, chain),
  };
}

function stageOf(station: Station, { circuit }: Trial, chain: Chain, at: Chain['ports'][number]): RfStage {
  const step = chain.steps.find((s) => s.to === at.port);
  return {
    port: rfPortName(station, circuit, at.port),
    by: step ? nameOfStep(station, step.edge) : '',
    lossDb: step?.lossDb ?? 0,
    matchedLossDb: step?.matchedLossDb ?? 0,
    tolerance: step?.edge.line?.tolerance ?? null,
    forwardWatts: at.forwardWatts,
    reflectedWatts: at.reflectedWatts,
    netWatts: at.netWatts,
    swr: at.swr,
    ohms: { re: at.ohms.re, im: at.ohms.im },
    peakVolts: at.peakVolts,
    tuned: step?.match == null ? null : step.match !== 'outside',
  };
}

const nameOfStep = (station: Station, { origin }: RfEdge): string => {
  if (origin.type === 'cable') return findCable(station, origin.cable)?.number ?? origin.cable;
  return origin.type === 'element' ? unitName(station, origin.unit) : 'the air';
};

function endOf(
  station: Station,
  { circuit }: Trial,
  { load, watts, ohms, doubt }: ChainEnd,
  harmonics: readonly ChainHarmonic[],
): RfEnd {
  const { hertz } = circuit.rf;
  const isAntenna = load.spec.role === 'antenna';
  return {
    name: unitName(station, load.unit),
    role: load.spec.role,
    watts,
    ohms: { re: ohms.re, im: ohms.im },
    doubt,
    harmonics: isAntenna ? harmonics.map((harmonic) => harmonicOf(harmonic, hertz)) : [],
    keepM: isAntenna ? keepAway(station.plan, watts, load.spec.gainDbi, hertz) : null,
  };
}

/** A harmonic at an antenna against the two limits, each for the power that arrives there. */
function harmonicOf({ order, dbm, carrierDbm }: ChainHarmonic, hertz: number): RfHarmonic {
  const judge = (limitOf: typeof part97Limit) =>
    judgeHarmonic({ watts: wattsFromDbm(carrierDbm), hertz }, { harmonicDbc: dbm - carrierDbm }, limitOf)?.marginDb;
  return { order, dbm, part97MarginDb: judge(part97Limit) ?? null, categoryAMarginDb: judge(categoryALimit) ?? null };
}
