// Words of the sand filter.

export const english = {
  name: 'Sand filter',
  does: 'Presses water through sand that keeps solids down to about 20 to 30 µm.',
  mistake: 'People give it coarse solids; the sand blocks within hours and takes the head of the pump.',
};
