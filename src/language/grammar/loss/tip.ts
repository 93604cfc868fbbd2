/** Where what is thrown away goes: "on the heap", "into the green bin". */
export const TIP = /\b(?:bin|compost|heap|skip|tip|bonfire|rubbish|fire|dustbin|trash|garbage|dumpster)\b/;
