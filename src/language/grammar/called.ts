/** What growers call the one they talk to: "mate", "pet", "hon"; never a name. */
export const CALLED =
  'mate|boss|love|luv|duck|ducks|duckie|bab|me duck|me ducks|my duck|me love|me lover|pet|hun|hon|honey|pal|chuck|lad|lads|bot|dear|dearie|my dear|my love|my lovely|my lover|darling|hen|sweetheart|sweetie|babe|petal|bud|buddy|dude|bro|folks|guys|chief|sir';
