// Words of the UV unit.

export const english = {
  name: 'UV unit',
  does: 'Shines ultraviolet light through the water to kill free bacteria.',
  mistake: 'People put it in turbid water; particles take the light and shelter what it should kill.',
  cautions: {
    uvLight: {
      full: 'Ultraviolet light burns eyes and skin within seconds. Never look at a lit lamp and never run it outside its housing; unplug it before you open it. A broken lamp sets mercury free: local rules for hazardous waste decide where it goes.',
      short: 'Ultraviolet lamps burn eyes within seconds: never lit outside its housing, unplugged before it is opened.',
    },
  },
};
