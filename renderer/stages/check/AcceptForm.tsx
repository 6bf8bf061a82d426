import { useId, useState } from 'react';
import { acceptFinding, type Finding } from '../../../core/index.ts';
import { change } from '../../store/document.ts';

/** Accepting a finding needs a reason; both stay in the document until the figures behind it change. */
export function AcceptForm({ finding }: { finding: Finding }) {
  const id = useId();
  const [open, setOpen] = useState(false);
  const [reason, setReason] = useState('');
  if (!open) {
    return (
      <button type="button" className="link small" onClick={() => setOpen(true)}>
        Accept it with a reason
      </button>
    );
  }
  const accept = (event: React.FormEvent) => {
    event.preventDefault();
    if (reason.trim() === '') return;
    change(acceptFinding(finding, reason.trim()));
  };
  return (
    <form className="accept" onSubmit={accept}>
      <label htmlFor={id}>Why is it all right?</label>
      <input
        id={id}
        className="input"
        value={reason}
        ref={focusOnce}
        autoComplete="off"
        onChange={(event) => setReason(event.target.value)}
      />
      <span className="accept-buttons">
        <button type="submit" className="button main" disabled={reason.trim() === ''}>
          Accept
        </button>
        <button type="button" className="button" onClick={() => setOpen(false)}>
          Cancel
        </button>
      </span>
    </form>
  );
}

/** The user has just asked for this field. */
const focusOnce = (field: HTMLInputElement | null) => field?.focus();
