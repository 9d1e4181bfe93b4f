// Words of the fluidised-sand biofilter.

export const english = {
  name: 'Fluidised-sand biofilter',
  does: 'Lifts a bed of fine sand with the water itself: film on every grain, nothing caught.',
  mistake: 'People throttle the pump to save power; the sand sinks, packs, catches solids and rots.',
};
