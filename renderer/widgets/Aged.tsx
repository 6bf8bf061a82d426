import { type Computed, ofAnyAge } from '../store/computed.ts';
import { AgeLine } from './AgeLine.tsx';
import { AgeContext, oldWords } from './age-words.ts';

interface Props<T> {
  of: Computed<T>;
  /** The screen says elsewhere that it is old; paper does here. */
  saidAbove?: boolean;
  children: (value: T) => React.ReactNode;
}

/** Something computed, with its age said above it; where there is none, that it is not computed. */
export function Aged<T>({ of, saidAbove = false, children }: Props<T>) {
  const value = ofAnyAge(of);
  return (
    <>
      {saidAbove ? (
        <div className="print-only">
          <AgeLine of={of} />
        </div>
      ) : (
        <AgeLine of={of} />
      )}
      {value !== null && <AgeContext value={oldWords(of)}>{children(value)}</AgeContext>}
    </>
  );
}
