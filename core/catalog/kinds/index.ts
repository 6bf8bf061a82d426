import type { UnitKind } from '../../station/unit-kind.ts';
import { headphones } from './audio/headphones.ts';
import { loudspeaker } from './audio/loudspeaker.ts';
import { changeoverByLine } from './changeover/changeover-by-line.ts';
import { changeoverSensingRf } from './changeover/changeover-sensing-rf.ts';
import { coaxSwitch } from './changeover/coax-switch.ts';
import { computer } from './computer/computer.ts';
import { arrestor } from './earth/arrestor.ts';
import { earthBar } from './earth/earth-bar.ts';
import { keyer } from './keying/keyer.ts';
import { paddle } from './keying/paddle.ts';
import { straightKey } from './keying/straight-key.ts';
import { receiverWithMute } from './listening/receiver-with-mute.ts';
import { receiverWithoutMute } from './listening/receiver-without-mute.ts';
import { sdrReceiverUsb } from './listening/sdr-receiver-usb.ts';
import { benchSupply } from './power/bench-supply.ts';
import { fusedStrip } from './power/fused-strip.ts';
import { jackBox } from './power/jack-box.ts';
import { leadAcidBattery } from './power/lead-acid-battery.ts';
import { lifepo4Battery } from './power/lifepo4-battery.ts';
import { plugInAdapter } from './power/plug-in-adapter.ts';
import { switchModeSupply } from './power/switch-mode-supply.ts';
import { attenuator } from './rf/attenuator.ts';
import { dipole } from './rf/dipole.ts';
import { dummyLoad5w } from './rf/dummy-load-5w.ts';
import { dummyLoad100w } from './rf/dummy-load-100w.ts';
import { lowPassFilter } from './rf/low-pass-filter.ts';
import { manualTuner } from './rf/manual-tuner.ts';
import { swrMeter } from './rf/swr-meter.ts';
import { wireAntenna } from './rf/wire-antenna.ts';
import { amplifier40w } from './sending/amplifier-40w.ts';
import { cwTransmitter3w } from './sending/cw-transmitter-3w.ts';
import { cwTransmitter5w } from './sending/cw-transmitter-5w.ts';
import { transceiver100w } from './sending/transceiver-100w.ts';

/** A unit kind as the shelf offers it. */
export interface ShelfKind {
  readonly id: string;
  readonly kind: UnitKind;
}

/** Every kind of the shelf, in the order in which a reader finds them. To add one: copy a file, list it here. */
export const shelf: readonly ShelfKind[] = [
  { id: 'bench-supply', kind: benchSupply },
  { id: 'switch-mode-supply', kind: switchModeSupply },
  { id: 'plug-in-adapter', kind: plugInAdapter },
  { id: 'lead-acid-battery', kind: leadAcidBattery },
  { id: 'lifepo4-battery', kind: lifepo4Battery },
  { id: 'fused-strip', kind: fusedStrip },
  { id: 'jack-box', kind: jackBox },
  { id: 'cw-transmitter-3w', kind: cwTransmitter3w },
  { id: 'cw-transmitter-5w', kind: cwTransmitter5w },
  { id: 'transceiver-100w', kind: transceiver100w },
  { id: 'amplifier-40w', kind: amplifier40w },
  { id: 'receiver-with-mute', kind: receiverWithMute },
  { id: 'receiver-without-mute', kind: receiverWithoutMute },
  { id: 'sdr-receiver-usb', kind: sdrReceiverUsb },
  { id: 'changeover-by-line', kind: changeoverByLine },
  { id: 'changeover-sensing-rf', kind: changeoverSensingRf },
  { id: 'coax-switch', kind: coaxSwitch },
  { id: 'swr-meter', kind: swrMeter },
  { id: 'manual-tuner', kind: manualTuner },
  { id: 'dummy-load-5w', kind: dummyLoad5w },
  { id: 'dummy-load-100w', kind: dummyLoad100w },
  { id: 'wire-antenna', kind: wireAntenna },
  { id: 'dipole', kind: dipole },
  { id: 'attenuator', kind: attenuator },
  { id: 'low-pass-filter', kind: lowPassFilter },
  { id: 'straight-key', kind: straightKey },
  { id: 'paddle', kind: paddle },
  { id: 'keyer', kind: keyer },
  { id: 'headphones', kind: headphones },
  { id: 'loudspeaker', kind: loudspeaker },
  { id: 'computer', kind: computer },
  { id: 'arrestor', kind: arrestor },
  { id: 'earth-bar', kind: earthBar },
];
