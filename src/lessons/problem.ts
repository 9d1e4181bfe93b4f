// What is wrong with a file from outside: where, what was found there, what was expected. Codes with values; src/words says them.

/** Things that a whole number may count. */
export type Counted = 'fish' | 'days' | 'units' | 'moves' | 'minutes' | 'hours';

/** What a list may hold. */
export type Listed =
  | 'actions'
  | 'caveats'
  | 'choices'
  | 'consequences'
  | 'demonstrations'
  | 'explanations'
  | 'goals'
  | 'hints'
  | 'hours'
  | 'lines'
  | 'marks'
  | 'mistakes'
  | 'parts'
  | 'predictions'
  | 'sideStageIds'
  | 'sideStages'
  | 'sizes'
  | 'spells'
  | 'stageIds'
  | 'stages'
  | 'stockings'
  | 'turningPoints';

interface Range {
  from: number;
  to: number;
}

/** Kinds of stage that can do what is asked. */
type Able = { code: 'givesSludge' | 'drained' | 'rinsed' | 'backwashed' | 'lit' | 'bed'; kinds: readonly string[] };

/** What a place in a file should hold. */
export type Expected =
  // shapes
  | ({ code: 'number' | 'whole' | 'text' | `list.${Listed}` | `whole.${Counted}` } & Range)
  | ({ code: 'numberOf'; unit: string } & Range)
  | { code: 'textUpTo'; to: number }
  | ({ code: 'words' } & Range)
  | { code: 'wordsUpTo' | 'charactersUpTo'; to: number }
  | { code: 'name' | 'yesNo' | 'languageTag' | 'sourceOrComposition' }
  | { code: 'oneOf'; names: readonly string[] }
  | { code: 'exactly'; text: string }
  | { code: 'object' | 'noSuchKey'; keys: readonly string[] }
  | { code: 'objectWith'; key: string }
  /** what the schema's library says of a fault that has no code of ours */
  | { code: 'other'; text: string }
  // JSON
  | {
      code:
        | 'json.end'
        | 'json.colon'
        | 'json.key'
        | 'json.value'
        | 'json.commaOrBrace'
        | 'json.commaOrBracket'
        | 'json.closingQuote'
        | 'json.nesting';
    }
  // a plan's parts among each other
  | Able
  | { code: 'missing'; wanted: Expected; there: readonly string[] }
  | { code: 'mediaThatFit' | 'roomFor'; m3: number }
  | {
      code:
        | 'ownName'
        | 'holdsWater'
        | 'stageWithWater'
        | 'wholeFlow'
        | 'beginsAtFishTank'
        | 'oneFishTank'
        | 'onePump'
        | 'pump'
        | 'pumpFixed'
        | 'fishTankOfLoop'
        | 'tankOfLoop'
        | 'oneDosing'
        | 'oneMineralisation'
        | 'dayOrEvery'
        | 'fromWithEvery'
        | 'toWithEvery'
        | 'dayNorEvery'
        | 'pumpToActOn'
        | 'dosingToActOn';
    }
  | { code: 'notBefore'; day: number }
  // a water's quantities among each other
  | { code: 'beside.CO2_mg_L' | 'beside.NH3_mgN_L' | 'beside.H2S_ug_L' }
  // a lesson's parts among each other
  | { code: 'noRig' | 'higherMark' | 'ownMistakeKey' | 'ownChoiceKey' | 'ownPredictionKey' | 'ownDemonstrationKey' | 'eachOnce' }
  | { code: 'asMarkBefore'; value: number }
  | { code: 'sizeOf'; stage: string }
  | { code: 'above'; value: number }
  | { code: 'fixedInOrder' | 'sideOfLesson'; names: readonly string[] }
  | { code: 'oneMeasure' | 'stageToRead' | 'stageInBoth' | 'stageInReference' | 'limits' | 'limitsOrTimes' }
  | { code: 'dayInSeason'; days: number }
  | { code: 'dayAfter' | 'dayAfterAsking'; day: number; days: number }
  | { code: 'openBelow' | 'openAbove' | 'beginsWhereEnds' | 'aboveAtLeast' }
  | { code: 'beginsAt'; value: number };

/** What stands there instead. */
export type Found =
  | { code: 'nothing' | 'emptyList' | 'emptyObject' | 'endOfText' | 'noFixedStages' }
  /** a value as the file has it, cut short */
  | { code: 'value'; text: string }
  | { code: 'list'; n: number }
  | { code: 'characters'; n: number }
  /** its keys in a row, cut short */
  | { code: 'object'; keys: string }
  | { code: 'stageOfKind'; stage: string; kind: string }
  | { code: 'fixedStages'; names: readonly string[] };

/**
 * path: `loop[2].volume_m3`, empty for the whole file; line: where in the file's text, from 1, if that is known;
 * column: beside the line where the text is no JSON, and so has no path.
 */
export interface Problem {
  path: string;
  got: Found;
  expected: Expected;
  line?: number;
  column?: number;
}
