// Words of the raft bed.

export const english = {
  name: 'Raft bed',
  does: 'Floats leafy plants over a trough (deep-water culture); their roots hang in the water and take up nutrients.',
  mistake: 'People let solids and stale water reach the roots, and forget that roots breathe too.',
};
