// English words for why: what happened in a stage in a whole day. Every sentence carries numbers of the model.

export const whyWords = {
  'why.title': 'Why',
  'why.day': 'In the whole of day {day}:',
  'why.nothing': 'Nothing happened here in day {day} that moved the water.',
  'why.notYet': 'After the first whole day, this says what happened here and why.',
  'why.nitrifiers': 'Bacteria here turned {ammonia} of ammonia nitrogen into nitrite and {nitrite} of nitrite nitrogen on into nitrate.',
  'why.nitrifiersOxygen':
    'Bacteria here turned {ammonia} of ammonia nitrogen into nitrite and {nitrite} of nitrite nitrogen on into nitrate, which took {oxygen} of oxygen.',
  'why.nitrifiersAlkalinity':
    'Bacteria here turned {ammonia} of ammonia nitrogen into nitrite and {nitrite} of nitrite nitrogen on into nitrate, and the acid from it used up {alkalinity} meq/L of the loop’s alkalinity.',
  'why.fish': 'Fish digested {feed} of feed, gave off {ammonia} of ammonia nitrogen and breathed {oxygen} of oxygen.',
  'why.hungryFish':
    'Hungry fish burned {flesh} of their own flesh, gave off {ammonia} of ammonia nitrogen and breathed {oxygen} of oxygen.',
  'why.airIn': 'The air gave the water {oxygen} of oxygen and took {carbonDioxide} of carbon dioxide out of it.',
  'why.airInOnly': 'The air gave the water {oxygen} of oxygen.',
  'why.airOut': 'The air took {carbonDioxide} of carbon dioxide and {oxygen} of spare oxygen out of the water.',
  'why.airOutOnly': 'The air took {carbonDioxide} of carbon dioxide out of the water.',
  'why.oxygenLost': 'The water gave {oxygen} of spare oxygen back to the air.',
  'why.heterotrophs': 'Bacteria that live on waste burned {organics} of it, which took {oxygen} of oxygen.',
  'why.denitrified': 'Where oxygen is missing, bacteria turned {nitrate} of nitrate nitrogen into nitrogen gas.',
  'why.rotted': 'Solids that broke down here gave {ammonia} of ammonia nitrogen to the water.',
  'why.sulfideMade': 'Solids lying without oxygen let {sulfide} of sulfide into the water.',
  'why.sulfideGone': 'Of sulfide in the water, bacteria and oxygen used up {oxidised} and the air took {aired}.',
  'why.settled': '{solids} of solids settled to the bottom here.',
  'why.caught': '{solids} of solids were caught here.',
  'why.caughtByRoots': '{solids} of solids were caught here, by roots and what holds them.',
  'why.stirred': '{solids} of solids that lay here came loose again.',
  'why.broken': 'The air broke {solids} of coarse solids into fine ones.',
  'why.plants': 'Plants took up {nitrogen} of nitrogen and grew {leaf} of dry leaf.',
  'why.gas': '{gas} of gas rose from the sludge.',
  'why.dosed': '{base} of base went in: enough to raise the loop’s alkalinity by {alkalinity} meq/L.',
  'why.lamp': 'The lamp killed {share} of the free bacteria that passed it.',

  'why.andHeld': '{what} {held}',

  // what held a process back, with the day's mean
  'held.ammonia': 'There was little ammonia to work on ({reading}).',
  'held.nitrite': 'There was little nitrite to work on ({reading}).',
  'held.oxygen': 'Lack of oxygen held them back ({reading}).',
  'held.pH': 'Acid water held them back (pH {reading}).',
  'held.alkalinity': 'Low alkalinity held them back ({reading}).',
  'held.organics': 'There was little waste left to burn ({reading}).',
  'held.nitrogen': 'Nitrogen ran short ({reading}).',
  'held.phosphorus': 'Phosphorus ran short ({reading}).',
  'held.potassium': 'Potassium ran short ({reading}).',
  'held.calcium': 'Calcium ran short ({reading}).',
  'held.magnesium': 'Magnesium ran short ({reading}).',
  'held.iron': 'Iron ran short ({reading}).',
  'held.roots': 'Sick roots held them back (health {reading}).',
} as const;
