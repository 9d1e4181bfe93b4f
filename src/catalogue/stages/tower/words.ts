// Words of the tower.

export const english = {
  name: 'Tower',
  does: 'Grows plants upright: water seeps down through matting and roots.',
  mistake: 'People count the floor it saves and forget the lift, and that it dries out within the hour when the pump stops.',
};
