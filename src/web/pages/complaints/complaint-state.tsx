import { complaintWords } from '../../../words/index.ts';
import { State } from '../../parts/state.tsx';
import type { Complaint } from './complaint.ts';

const KINDS = { open: 'watch', 'looked-into': 'going', closed: 'ready' } as const;

/** How it stands; an open serious one stops the eye. */
export const ComplaintState = ({ complaint: { state, effect } }: { readonly complaint: Complaint }) => (
  <State kind={effect === 'serious' && state !== 'closed' ? 'stop' : KINDS[state]}>
    {complaintWords.states[state]}
    {effect === 'none' ? '' : `, ${complaintWords.effects[effect]}`}
  </State>
);
