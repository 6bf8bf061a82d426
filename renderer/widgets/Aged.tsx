import { type Computed, ofAnyAge } from '../store/computed.ts';
import { AgeLine } from './AgeLine.tsx';
import { AgeContext, oldWords } from './age-words.ts';

interface Props<T> {
  of: Computed<T>;
  children: (value: T) => React.ReactNode;
}

/** Something computed, with its age said above it; where there is none, that it is not computed. */
export function Aged<T>({ of, children }: Props<T>) {
  const value = ofAnyAge(of);
  return (
    <>
      <AgeLine of={of} />
      {value !== null && <AgeContext value={oldWords(of)}>{children(value)}</AgeContext>}
    </>
  );
}
