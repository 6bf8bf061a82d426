import { useStore } from 'zustand';
import { counted, type MixUp, precautionFor, ringTable, type Station } from '../../../core/index.ts';
import type { MixUpResult } from '../../store/studies.ts';
import { useStation } from '../../store/use-store.ts';
import { Aged } from '../../widgets/Aged.tsx';
import { SeverityShape } from '../../widgets/SeverityShape.tsx';
import { BookTable } from './BookTable.tsx';
import { bookStore, type PreparedBook } from './book-store.ts';
import { mostUnitsTried } from './prepare-book.ts';

/** So many are told whole, the worst and easiest; the others are counted. */
const mostTold = 12;

const isDanger = ({ severity }: MixUp): boolean => severity === 'danger';

/** Whether there is nothing to say of mix-ups: all were tried, none injures or destroys, and no jack has a ring. */
export function isNothingMixedUp(station: Station, { mixUps }: PreparedBook): boolean {
  if (mixUps?.is !== 'fresh') return false;
  return !mixUps.value.study.mixUps.some(isDanger) && ringTable(station).rows.length === 0;
}

/** Plugs that a hand could exchange and must not, the rings that tell them apart, and those that would. */
export function BookMixUps() {
  const mixUps = useStore(bookStore, (s) => s.printing?.mixUps);
  return (
    <>
      <Rings />
      {mixUps ? (
        <Aged of={mixUps}>{(result) => <Tried result={result} />}</Aged>
      ) : (
        <p>
          Not computed: with more than {mostUnitsTried} units it takes minutes to try what a hand could do wrong. Look
          at the list in Check first, and the book has it too.
        </p>
      )}
    </>
  );
}

function Rings() {
  const table = ringTable(useStation());
  if (table.rows.length === 0) return null;
  return (
    <>
      <p>Each of these jacks has a ring of its colour, and so has the plug that belongs there.</p>
      <BookTable table={table} />
    </>
  );
}

function Tried({ result: { study, scheme } }: { result: MixUpResult }) {
  const dangers = study.mixUps.filter(isDanger);
  const { measures, left } = scheme;
  return (
    <>
      {study.prevented > 0 && (
        <p>{counted(study.prevented, 'mix-up is', 'mix-ups are')} told in time by the rings, and were not tried.</p>
      )}
      {dangers.length > 0 ? (
        <h3>What injures or destroys</h3>
      ) : (
        <p>No mix-up that injures or destroys is left, as far as this can be computed.</p>
      )}
      {dangers.slice(0, mostTold).map((mixUp) => (
        <OnPaper key={mixUp.act.id} mixUp={mixUp} />
      ))}
      {dangers.length > mostTold && <p>And {dangers.length - mostTold} more: see the list in Check.</p>}
      {measures.length > 0 && <h3>Rings that would tell a hand of it</h3>}
      <ul className="book-list">
        {measures.map(({ id, words }) => (
          <li key={id}>{words}</li>
        ))}
      </ul>
      {left.length > 0 && <h3>What rings do not prevent</h3>}
      <ul className="book-list">
        {left.map((mixUp) => (
          <li key={mixUp.act.id}>
            {mixUp.act.words}. {precautionFor(mixUp)}
          </li>
        ))}
      </ul>
      <p>
        An estimate from the figures entered; two mistakes together are not looked at. A ring tells where a plug belongs
        and keeps none out: where somebody could be hurt, a connector that does not fit is better.
      </p>
    </>
  );
}

function OnPaper({ mixUp: { act, alike, severity, harms, strikes } }: { mixUp: MixUp }) {
  const worst = harms.find((f) => f.severity !== 'note' && f.causedBy === undefined) ?? harms[0];
  return (
    <div className="book-finding">
      <SeverityShape severity={severity} size={14} />
      <div>
        <h4>{act.words}</h4>
        <p>
          {worst.message} It strikes {strikes}.
        </p>
        {alike.length > 0 && <p className="book-where">Alike: {alike.map((a) => a.words).join('; ')}</p>}
      </div>
    </div>
  );
}
