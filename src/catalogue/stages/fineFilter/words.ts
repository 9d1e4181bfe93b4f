// Words of the fine-solids filter.

export const english = {
  name: 'Fine-solids filter',
  does: 'Holds back fine solids in layers of mat, and carries some biofilm.',
  mistake: 'People give it coarse solids or never rinse it; it clogs, and more and more water bypasses it.',
};
