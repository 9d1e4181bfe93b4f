// English words of the commands: help, what went wrong, and the table of a lesson as it was played.

export const commandWords = {
  'command.seasonHelp': `Runs a plan and prints the season as a table.

  npm run -s season -- PLAN.json [--every day|hour] [--csv|--json]
  npm run -s season -- PLAN.json --ensemble N     N seasons with every parameter drawn from its range; same plan, same bands
  npm run -s season -- -                 reads the plan from standard input
  npm run -s season -- --preset          lists the example plans
  npm run -s season -- --preset NAME     prints one, ready to be changed or piped back in

Rows: day 0 is the start, then the end of each day (or hour). Columns: day, then <stage>.<variable>, scores, ledger.
A stage of several cells shows the mean of its water, the sum of its sludge, and flow and level where the water leaves.
A pump shows the water it lifts. eaten_g_d of a daily row is the day's mean. Hourly rows carry the scores of the last
midnight; before the first there are none (NaN). The ledger columns are the
mass balance of the whole season: how far each element fails to close, relative, and in clipped the mass cut off at zero.
An ensemble has columns <stage>.<variable>.p10, .p50 and .p90, a row a day; draws that could not be run are told on standard error.
Exit code 0: printed; 1: the plan cannot be used; 2: the command cannot be understood.
`,
  'command.lessonHelp': `Checks a lesson file and plays it.

  npm run -s lesson -- levels/NN-name.json               (or - for standard input)
  npm run -s lesson -- levels/NN-name.json --plan KEY    prints the plan of the reference or of a mistake instead

Exit code 0: the reference earns three marks, every listed mistake shows its consequences, an idle player earns no mark;
1: something of that fails, or the file cannot be used; 2: the command cannot be understood.
`,
  'command.sequencesHelp': `Plays the parts of a lesson or plan in every sequence, and tells what each costs.

  npm run -s sequences -- LESSON.json|PLAN.json [--json]     (or - for standard input)

A lesson is played with its reference's feed, air and routines; its parts are those of its shelf that the reference places.
A plan is its own reference and has no marks; its parts are all stages but the fish tank, the sump and the pump.
Played are every sequence of the parts in the places where parts stand (up to 120; of more, always the same 120 with the reference
among them), each two parts exchanged, each part left out with what is done to it, and each routine left out.
Heights follow the sequence as on the page. A loop in which water cannot flow is played as the page would play it, and its cause says so;
a variant that cannot be played has no scores but the reason.
The largest loss is the score, fish health or harvest, that fell most below the reference's (the reference: below 100). Its cause is what
the season recorded and the reference was spared: a fault of the design, a mishap, means of what plants or fish grow by that fell by 1 %
or more, and the limit of fish or roots that was the worst one passed for most hours beyond the reference's (2 % of all or more).
The summary counts all sequences played and ranks by fish health + harvest. Quartiles: a quarter of the sequences lies below the first.
Exit code 0: played; 1: the file cannot be used; 2: the command cannot be understood.
`,
  'command.waterHelp': `Usage: npm run -s water -- FILE.jsonl     (or - for standard input)

One JSON object a line; each is answered by one line. Blank lines are skipped.
Give T_C, and two of alkalinity_meq_L (titration alkalinity), DIC_mmol_L and pH; or pH alone, for fractions only;
or neither, for oxygen saturation only. What a line does not tell is answered by null, a bad line by an object with the key "error".

Fields:
{fields}

Ionic strength is computed unless given: sodium (or an unnamed anion) closes the charge balance, and a salinity sets the
least it can be; 0 asks for the ideal solution. With pH alone it is 0 unless nitrate, calcium, chloride or salinity are given.
Alkalinity is [HCO3-] + 2[CO3--] + [NH3] + [HS-] + [HPO4--] + 2[PO4---] - [H3PO4] + [OH-] - [H+]; pH is -log activity.
`,
  'command.waterField': '{low} to {high} {unit}',

  // what a command cannot do
  'command.gotFor': '{option}: got {got}; expected {expected}',
  'command.gotNothingFor': '{option}: got nothing; expected {expected}',
  'command.every': 'hour or day',
  'command.draws': 'a number of draws from 1 to 9999',
  'command.oneOf': 'one of {names}',
  'command.option': 'got {got}; expected {names} or --help',
  'command.onePlan': 'got {got} after {plan}; expected one plan',
  'command.noPlan': 'no plan given',
  'command.oneLesson': 'got "{got}"; expected one lesson file',
  'command.oneFile': 'got "{got}"; expected one lesson or plan',
  'command.noExample': 'no example plan "{name}"; there are {names}',
  'command.noFile': '{name}: no such file',
  'command.folder': '{name}: a folder, not a file',
  'command.unreadable': '{name}: cannot be read ({code})',
  'command.refused': '{name} cannot be used:',
  'command.standardInput': 'standard input',
  'command.otherModel': 'written for model {written}, run with model {now}: results may differ',
  'command.oldFormat': 'written in the format {format}, read as it was meant',
  'command.oldNames': 'written in the format {format}, read as it was meant; names that have changed since:',
  'command.oldName': '{was} is now {is}',
  'command.drawFailed': 'draw {draw} of {draws} could not be run: {reason}',

  // a lesson as it was played
  'played.build': 'build',
  'played.fishHealth': 'fish health',
  'played.harvest': 'harvest',
  'played.marks': 'marks',
  'played.pass': 'pass',
  'played.failReference': 'FAIL: expected three marks, and what it asks to be settled',
  'played.failMistake': 'FAIL: expected its consequences',
  'played.failIdle': 'FAIL: expected no mark',
  'played.reference': 'the reference loop',
  'played.idle': 'the loop as given, nothing done',
  'played.shows': 'shows  {line}',
  'played.asks': 'asks   {line}',
  'played.fails': 'FAILS  {line}',
  'played.shown': '{what}: {mistake} against {reference} = {times} times; expected {limits}',
  'played.shownFrom': '{what} from day {from}: {mistake} against {reference} = {times} times; expected {limits}',
  'played.shownTo': '{what} to day {to}: {mistake} against {reference} = {times} times; expected {limits}',
  'played.shownBetween': '{what} from day {from} to day {to}: {mistake} against {reference} = {times} times; expected {limits}',
  'played.atLeast': 'at least {limit}',
  'played.atMost': 'at most {limit}',
  'played.atLeastTimes': 'at least {limit} times',
  'played.atMostTimes': 'at most {limit} times',
  'played.aDay': '{what} a day',
  'played.goal': 'goal "{text}": {value}',
  'played.prediction': 'prediction {key}: {value} = {outcome}; explanations: {explanations}',
  'played.explanation': '{key} {value}',
  'played.explanationHolds': '{key} {value} holds',
  'played.demonstration': 'demonstration {key}: {right} against {left} = {times} times = {outcome}',
  'played.noChoice': 'no choice',

  // the sequences of a lesson's or plan's parts
  'sequences.sequence': 'sequence (* the reference)',
  'sequences.isReference': '* {order}',
  'sequences.isOther': '  {order}',
  'sequences.withoutPart': 'without the part',
  'sequences.withoutRoutine': 'without the routine',
  'sequences.routine': '{what}, every {days} d from day {from}',
  'sequences.handOver': 'hand-over',
  'sequences.work': 'work, h',
  'sequences.loss': 'largest loss',
  'sequences.cause': 'cause',
  'sequences.lost': '{score} −{points}',
  'sequences.noCause': 'nothing recorded that the reference was spared',
  'sequences.refused': 'cannot be played ({code}): {words}',
  'sequences.mishap': '{what} (day {day})',
  'sequences.fallen': '{what} {value} on average in {stage}, the reference {reference}',
  'sequences.trouble': '{what}, {hours} h longer',
  'sequences.scored': '{order}: fish health {fishHealth}, harvest {harvest}',
  'sequences.played': 'sequences    {played} of {possible}, {refused} could not be played',
  'sequences.best': 'best         {what}',
  'sequences.worst': 'worst        {what}',
  'sequences.quartiles': 'quartiles    fish health {fishHealth}, harvest {harvest}',
  'sequences.threeMarks': 'three marks  {percent} % of the sequences',
  'sequences.rank': 'reference    rank {rank} of {of}; {what}',

  // what is wrong with a line of water
  'waterLine.fault': '{key}: found {found}, expected {expected}',
  'waterLine.line': 'line',
  'waterLine.nothing': 'nothing',
  'waterLine.object': 'one JSON object',
  'waterLine.otherKeys': 'no other keys than {keys}',
  'waterLine.range': 'a number from {low} to {high} ({unit})',
  'waterLine.allThree': 'all three',
  'waterLine.twoOfThem': 'two of them, which fix the third',
  'waterLine.alone': 'it alone',
  'waterLine.besideAlkalinity': 'DIC_mmol_L or pH with it',
  'waterLine.besideCarbon': 'alkalinity_meq_L or pH with it',
  'waterLine.computed': '{value} (computed)',
  'waterLine.ionicStrength': 'at most {limit}, where the activity equation ends; give it to have this water solved at a value of your own',
  'waterLine.atPH': '{value} at pH {pH}',
  'waterLine.alkalinity': 'at least {least}, which the other bases make at this pH with no carbonate at all',
  'waterLine.noFile': 'Cannot read {source}: there is no such file.',
  'waterLine.folder': 'Cannot read {source}: it is a folder.',
  'waterLine.denied': 'Cannot read {source}: permission denied.',
  'waterLine.unreadable': 'Cannot read {source}: {reason}.',
} as const;
