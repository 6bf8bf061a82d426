import { tripsUnderPower } from '../../../core/rules/keying/trips-under-power.ts';
import { testRule } from '../test-rule.ts';
import { tripped } from './trip-station.ts';

// Common practice: RF off first, then the relay.
testRule(tripsUnderPower, {
  silent: [{ name: 'a protection in the transmitter’s key line', station: tripped('tx') }],
  reported: [
    {
      name: 'a protection in the amplifier’s key line alone',
      station: tripped('amp'),
      message: 'trips',
      severity: 'doubt',
      at: { unit: 'guard' },
    },
  ],
});
