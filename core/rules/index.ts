import { audioGroundLoop } from './audio/audio-ground-loop.ts';
import { audioLevel } from './audio/audio-level.ts';
import { dcOnAudio } from './audio/dc-on-audio.ts';
import { loadImpedance } from './audio/load-impedance.ts';
import { monoInStereo } from './audio/mono-in-stereo.ts';
import { twoOutputsJoined } from './audio/two-outputs-joined.ts';
import { adapterNeeded } from './drawing/adapter-needed.ts';
import { crowdedPort } from './drawing/crowded-port.ts';
import { doesNotMate } from './drawing/does-not-mate.ts';
import { earth } from './drawing/earth.ts';
import { earthsApart } from './drawing/earths-apart.ts';
import { endsTooFar } from './drawing/ends-too-far.ts';
import { fitsButShouldNot } from './drawing/fits-but-should-not.ts';
import { noDummyLoadHookup } from './drawing/no-dummy-load-hookup.ts';
import { oneConnectorManyJobs } from './drawing/one-connector-many-jobs.ts';
import { portNeededOpen } from './drawing/port-needed-open.ts';
import { screenOpen } from './drawing/screen-open.ts';
import { storm } from './drawing/storm.ts';
import { typicalFigures } from './drawing/typical-figures.ts';
import { amplifierNeverSwitched } from './keying/amplifier-never-switched.ts';
import { backEmf } from './keying/back-emf.ts';
import { breakIn } from './keying/break-in.ts';
import { firstElementLost } from './keying/first-element-lost.ts';
import { hotSwitched } from './keying/hot-switched.ts';
import { keyLineStuck } from './keying/key-line-stuck.ts';
import { keyingUnsettled } from './keying/keying-unsettled.ts';
import { lineNeverLowEnough } from './keying/line-never-low-enough.ts';
import { lineOverRating } from './keying/line-over-rating.ts';
import { logicLevels } from './keying/logic-levels.ts';
import { muteInverted } from './keying/mute-inverted.ts';
import { noMute } from './keying/no-mute.ts';
import { nothingKeysIt } from './keying/nothing-keys-it.ts';
import { tripsUnderPower } from './keying/trips-under-power.ts';
import { backFeed } from './power/back-feed.ts';
import { batteryTooSmall } from './power/battery-too-small.ts';
import { chargeOverloads } from './power/charge-overloads.ts';
import { connectorOverloaded } from './power/connector-overloaded.ts';
import { converterRange } from './power/converter-range.ts';
import { fuseBreaking } from './power/fuse-breaking.ts';
import { fuseOneLead } from './power/fuse-one-lead.ts';
import { fuseOverUnit } from './power/fuse-over-unit.ts';
import { fuseOverWire } from './power/fuse-over-wire.ts';
import { fuseWillOpen } from './power/fuse-will-open.ts';
import { noFuse } from './power/no-fuse.ts';
import { notPowered } from './power/not-powered.ts';
import { overVoltage } from './power/over-voltage.ts';
import { returnMissing } from './power/return-missing.ts';
import { returnThroughShield } from './power/return-through-shield.ts';
import { reversedPolarity } from './power/reversed-polarity.ts';
import { shortCircuit } from './power/short-circuit.ts';
import { suppliesInParallel } from './power/supplies-in-parallel.ts';
import { supplyOverloaded } from './power/supply-overloaded.ts';
import { supplyRunaway } from './power/supply-runaway.ts';
import { switchBypassed } from './power/switch-bypassed.ts';
import { underVoltage } from './power/under-voltage.ts';
import { unregulated } from './power/unregulated.ts';
import { voltageDrop } from './power/voltage-drop.ts';
import { wireOverloaded } from './power/wire-overloaded.ts';
import { amplifierOverdriven } from './rf/amplifier-overdriven.ts';
import { antennaUnprotected } from './rf/antenna-unprotected.ts';
import { changeoverReversed } from './rf/changeover-reversed.ts';
import { coaxOverpowered } from './rf/coax-overpowered.ts';
import { dcOnRf } from './rf/dc-on-rf.ts';
import { harmonicInReceiver } from './rf/harmonic-in-receiver.ts';
import { harmonics } from './rf/harmonics.ts';
import { impedanceMismatch } from './rf/impedance-mismatch.ts';
import { lineLoss } from './rf/line-loss.ts';
import { loadOverpowered } from './rf/load-overpowered.ts';
import { meterAfterTuner } from './rf/meter-after-tuner.ts';
import { meterRange } from './rf/meter-range.ts';
import { noChangeover } from './rf/no-changeover.ts';
import { plainTee } from './rf/plain-tee.ts';
import { preampTransmittedInto } from './rf/preamp-transmitted-into.ts';
import { rfExposure } from './rf/rf-exposure.ts';
import { rfFeedback } from './rf/rf-feedback.ts';
import { safeOnlyBySetting } from './rf/safe-only-by-setting.ts';
import { swrHigh } from './rf/swr-high.ts';
import { transmitIntoNothing } from './rf/transmit-into-nothing.ts';
import { transmitIntoReceiver } from './rf/transmit-into-receiver.ts';
import { transmitIntoTransmitter } from './rf/transmit-into-transmitter.ts';
import { tunerOutOfReach } from './rf/tuner-out-of-reach.ts';
import { wrongBand } from './rf/wrong-band.ts';
import type { Rule } from './rule.ts';

/** Every rule, causes before consequences: of two that may have led to a third, the earlier one is named. */
export const rules: readonly Rule[] = [
  fitsButShouldNot,
  doesNotMate,
  reversedPolarity,
  changeoverReversed,
  monoInStereo,
  portNeededOpen,
  shortCircuit,
  suppliesInParallel,
  noChangeover,
  returnMissing,
  overVoltage,
  unregulated,
  dcOnRf,
  fuseOverWire,
  noFuse,
  fuseBreaking,
  fuseWillOpen,
  wireOverloaded,
  connectorOverloaded,
  supplyOverloaded,
  chargeOverloads,
  supplyRunaway,
  switchBypassed,
  backFeed,
  converterRange,
  underVoltage,
  voltageDrop,
  returnThroughShield,
  batteryTooSmall,
  notPowered,
  keyLineStuck,
  keyingUnsettled,
  nothingKeysIt,
  lineNeverLowEnough,
  amplifierNeverSwitched,
  muteInverted,
  noMute,
  transmitIntoReceiver,
  preampTransmittedInto,
  transmitIntoNothing,
  wrongBand,
  tunerOutOfReach,
  transmitIntoTransmitter,
  amplifierOverdriven,
  loadOverpowered,
  rfFeedback,
  safeOnlyBySetting,
  coaxOverpowered,
  swrHigh,
  hotSwitched,
  tripsUnderPower,
  lineOverRating,
  backEmf,
  logicLevels,
  twoOutputsJoined,
  dcOnAudio,
  audioLevel,
  loadImpedance,
  audioGroundLoop,
  firstElementLost,
  impedanceMismatch,
  plainTee,
  lineLoss,
  meterRange,
  harmonics,
  harmonicInReceiver,
  fuseOverUnit,
  fuseOneLead,
  crowdedPort,
  adapterNeeded,
  screenOpen,
  endsTooFar,
  earthsApart,
  oneConnectorManyJobs,
  noDummyLoadHookup,
  breakIn,
  antennaUnprotected,
  storm,
  meterAfterTuner,
  rfExposure,
  earth,
  typicalFigures,
];
