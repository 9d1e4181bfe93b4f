// English words for what the page could not do.

export const failureWords = {
  'failure.lesson': 'This lesson file cannot be used',
  'failure.lessonHelp': 'Mend the file and open it again; the page keeps working.',
  'failure.problem': 'At {path}: got {got}; expected {expected}.',
  'failure.problemAt': 'Line {line}, at {path}: got {got}; expected {expected}.',
  'failure.worker': 'The season could not be worked out: {message}',
  'failure.workerStopped': 'its thread stopped',
  'failure.workerUnreadable': 'its thread sent something unreadable',
  'failure.world': 'The picture cannot be drawn in this browser ({message}). Everything still works from the lists.',
  'failure.noCanvas': 'it offers no canvas',
  'failure.read': 'The file could not be read: {message}',
  'failure.title': 'Something went wrong',
  'failure.piece': 'This part of the page did not arrive',
  'failure.pieceHelp':
    'The network may be away, or a newer version may have taken its place. Loop and season are kept as long as this page stays open: try again in a while, or go on without this part.',
  'failure.again': 'Try again',
  'failure.back': 'Go on without it',
  'failure.dismiss': 'Dismiss',
  'failure.noLesson': 'No lesson is open. Choose one with the button Lessons.',
  'page.title': 'Loopwright',
  'page.loading': 'Opening the lesson…',
  'page.world': 'The loop in side view. The same is in the list of the loop.',
  'page.close': 'Close',
} as const;
