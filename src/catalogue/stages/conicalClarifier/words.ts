// Words of the conical clarifier.

export const english = {
  name: 'Conical clarifier',
  does: 'A plain tank with a steep cone: water crosses it slowly and coarse solids sink, to be drained.',
  mistake: 'People make it too small for the flow; what has no time to sink swims on.',
};
