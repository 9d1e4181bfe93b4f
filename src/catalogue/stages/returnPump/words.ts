// Words of the return pump.

export const english = {
  name: 'Return pump',
  does: 'Lifts the water back to the top of the loop; everything else runs by gravity.',
  mistake: 'People pump dirty water; the pump chops coarse solids into fines that are harder to catch.',
  drewAir: 'The pump drew air and stands still',
};
