import fc from 'fast-check';
import { expect, it } from 'vitest';
import { NearestFirst } from '../../../core/trial/metal/nearest-first.ts';

it('gives back all that was put in, the least resistance first, also while more comes', () => {
  const rounds = fc.array(fc.record({ ohms: fc.integer({ min: 0, max: 40 }), takes: fc.nat(2) }));
  fc.assert(
    fc.property(rounds, (puts) => {
      const heap = new NearestFirst();
      const waiting: number[] = [];
      const take = () => {
        waiting.sort((a, b) => a - b);
        expect(heap.take()?.ohms).toBe(waiting.shift());
      };
      puts.forEach(({ ohms, takes }, node) => {
        heap.put(node, ohms);
        waiting.push(ohms);
        for (let i = 0; i < takes; i++) take();
      });
      while (waiting.length > 0) take();
      expect(heap.take()).toBeUndefined();
    }),
  );
});
