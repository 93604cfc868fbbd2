/** Verbs of tending plants that a bare intention must name to be worth keeping. */
import { whole } from '../../phrases.js';

export const CHORE = whole`
  take|strike|stick|root|propagate|cut|divide|split|sow|prick|pot|repot|transplant|bump|tray|space|plant|box
  pinch|nip|stop|trim|prune|deadhead|thin|stake|tip|top|bottom|pick
  mist|water|feed|spray|soak|drench|dunk|dose|treat|control|weed|mow|mix
  vent|shade|air|open|close|shut|cover|uncover|fleece|wrap|insulate|heat|defrost|switch|plug|unplug
  move|shift|bring|put|carry|lift|lug|stand|turn|rotate|harden|acclimatise|acclimate|wean|wake|dig
  check|look|see|watch|inspect|tug|test|read|measure|weigh|count|photo|photograph|label
  sell|give|swap|send|dispatch|ship|post|deliver|drop|load|pack|order|buy|get|collect|fetch|pay|book
  clean|wash|tidy|sort|fix|mend|empty|fill|replace|bin|ready|prepare|prep
  ring|call|phone|ask
  do|make|set|use|handle|try|start|finish|have|be|go|come
`;
