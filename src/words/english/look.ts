// English words for looking at one stage from close by, and for a page that cannot draw.

export const lookWords = {
  'look.closer': 'Look closer',
  'look.whole': 'Whole loop',
  'said.closer': '{stage} from close by. Escape or Z shows the whole loop.',
  'said.whole': 'The whole loop.',
  'look.noPicture':
    'This browser cannot draw the picture of the loop. Everything works without it: the list of the loop, the inspector and the traces hold all that the picture shows.',
  'help.keyLook': 'Z looks at the selected stage from close by, and back; so does a double click or double tap on it.',
} as const;
