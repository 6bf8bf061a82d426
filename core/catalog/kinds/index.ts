import type { UnitKind } from '../../station/unit-kind.ts';
import { headphones } from './audio/headphones.ts';
import { changeoverByLine } from './changeover/changeover-by-line.ts';
import { arrestor } from './earth/arrestor.ts';
import { earthBar } from './earth/earth-bar.ts';
import { keyer } from './keying/keyer.ts';
import { paddle } from './keying/paddle.ts';
import { receiverWithMute } from './listening/receiver-with-mute.ts';
import { benchSupply } from './power/bench-supply.ts';
import { fusedStrip } from './power/fused-strip.ts';
import { dummyLoad5w } from './rf/dummy-load-5w.ts';
import { manualTuner } from './rf/manual-tuner.ts';
import { swrMeter } from './rf/swr-meter.ts';
import { wireAntenna } from './rf/wire-antenna.ts';
import { cwTransmitter3w } from './sending/cw-transmitter-3w.ts';

/** A unit kind as the shelf offers it. */
export interface ShelfKind {
  readonly id: string;
  readonly kind: UnitKind;
}

/** Every kind of the shelf, in the order in which a reader finds them. To add one: copy a file, list it here. */
export const shelf: readonly ShelfKind[] = [
  { id: 'bench-supply', kind: benchSupply },
  { id: 'fused-strip', kind: fusedStrip },
  { id: 'cw-transmitter-3w', kind: cwTransmitter3w },
  { id: 'receiver-with-mute', kind: receiverWithMute },
  { id: 'changeover-by-line', kind: changeoverByLine },
  { id: 'swr-meter', kind: swrMeter },
  { id: 'manual-tuner', kind: manualTuner },
  { id: 'dummy-load-5w', kind: dummyLoad5w },
  { id: 'wire-antenna', kind: wireAntenna },
  { id: 'paddle', kind: paddle },
  { id: 'keyer', kind: keyer },
  { id: 'headphones', kind: headphones },
  { id: 'arrestor', kind: arrestor },
  { id: 'earth-bar', kind: earthBar },
];
