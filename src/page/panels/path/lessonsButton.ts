// The button that opens the path of lessons, by its id: the path gives the focus back to it.

export const LESSONS_BUTTON = 'lessons-button';
