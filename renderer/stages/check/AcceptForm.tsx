import { useId } from 'react';
import { useStore } from 'zustand';
import { acceptFinding, type Finding } from '../../../core/index.ts';
import { change } from '../../store/document.ts';
import { useTyped } from '../../store/typed.ts';
import { useStation } from '../../store/use-store.ts';
import { findingsView, forgetReason, typeReason } from './findings-view.ts';

interface Props {
  finding: Finding;
  /** The newest report no longer has it: there is nothing to accept. */
  gone?: boolean;
}

/** Accepting a finding needs a reason; both stay in the document until the figures behind it change. */
export function AcceptForm({ finding, gone = false }: Props) {
  const id = useId();
  const reason = useStore(findingsView, (v) => v.typed[finding.id]?.text);
  const earlier = useStation((s) => s.accepted.find((a) => a.finding === finding.id)?.reason);
  useTyped(Boolean(reason?.trim()));
  if (reason === undefined) {
    return (
      <>
        {earlier !== undefined && <p className="soft">Accepted before: {earlier}. Its figures have changed since.</p>}
        <button type="button" className="link small" onClick={() => typeReason(finding, earlier ?? '')}>
          {earlier === undefined ? 'Accept it with a reason' : 'Accept it again'}
        </button>
      </>
    );
  }
  const cannot = gone || reason.trim() === '';
  const accept = (event: React.FormEvent) => {
    event.preventDefault();
    if (cannot) return;
    change(acceptFinding(finding, reason.trim()));
    forgetReason(finding.id);
  };
  return (
    <form
      className="accept"
      onSubmit={accept}
      onKeyDown={(event) => {
        if (event.key === 'Escape') forgetReason(finding.id);
      }}
    >
      <label htmlFor={id}>Why is it all right?</label>
      <input
        id={id}
        className="input"
        value={reason}
        ref={focusIfFree}
        autoComplete="off"
        data-keep={`reason ${finding.id}`}
        onChange={(event) => typeReason(finding, event.target.value)}
      />
      <span className="accept-buttons">
        <button type="submit" className="button main" disabled={cannot}>
          Accept
        </button>
        <button type="button" className="button" onClick={() => forgetReason(finding.id)}>
          Cancel
        </button>
      </span>
    </form>
  );
}

/** The user has just asked for this field, or was in it when the list changed; nobody is taken out of another one. */
const focusIfFree = (field: HTMLInputElement | null) => {
  if (document.activeElement === document.body) field?.focus();
};
