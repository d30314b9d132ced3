/** Words of a wish and of what is taken for it. One idea a list. */

/** What one does before one decides, and what one decides to do about it. */
export const WISHES =
  /^(?:want(?:s|ed|ing)?|need(?:s|ed|ing)?|like|asks?|asked|asking|requires?|required|prefers?|preferred|seeks?|seeking|calls?|called|calling|look|looks|looking|wish(?:es|ed)?|after|requested|demands?|go|goes|going|mean|means|intend|aim|plan|rather|get|getting|try|trying|settle|hope|hoping|pick|choose|find|change|switch|move|shout|name)$/;

/** What one does with the size one takes. */
export const TAKES =
  /^(?:takes?|taking|took|uses?|used|using|pass|passes|passed|opens?|opened|opening|reach|reaches|reached|reaching|picks?|picked|picking|chooses?|chose|choosing|hands?|handed|grabs?|grabbed|pulls?|pulled|gets?|got|go|goes|going|went|moves?|moved|moving|changes?|changed|changing|switch|switches|switched|switching|swaps?|swapped|fetch|fetches|fetched|put|puts|putting|gives?|gave|tr(?:y|ies|ied|ying)|inserts?|inserted|places?|placed|selects?|selected|load|loads|step|steps|stepped|stepping|drop|drops|dropped|dropping|upsize|downsize|draw|brings?|brought|orders?|ordered|request|ask|asks|asked|slide|slides|slid|thread|run|site|sited|dig|unwrap|unwrapped|crack|break|settle|settled|plump|opt|opted|turn|turns|turned|resort|upgrade|downgrade|substitute|replaced?|start|starts|leave|pop|pass|shout|suggest|recommend|advise|pack|hang|tie|sew|close)$/;

/** Forms of those verbs in which something is told rather than taught. */
export const TOLD =
  /^(?:took|used|passed|opened|reached|picked|chose|handed|grabbed|pulled|got|went|moved|changed|switched|swapped|fetched|gave|tried|inserted|placed|selected|stepped|dropped|brought|ordered|asked|slid|sited|unwrapped|settled|opted|turned|replaced)$/;

/** What the author does, or what follows as a matter of course. */
export const OWN_ACT =
  /(?:^| )(?:i|we|you|is|are|be|being|so i|so we)(?: (?:then|therefore|simply|just|always|usually|have|had))?$/;

/** What stops a wish from reaching its choice. */
export const OPERATORS =
  /^(?:instead|unlike|but|except|unless|otherwise|whereas|while|although|though|however|yet|or|avoid|avoids|avoiding|prevent|risk|danger|fear|spare|save|without|away|back|wrong|wrongly|mistake|mistakenly|who|whoever|whose|which|seems?|seemed|appears?|looks?|off|nothing|than|below|above|may|might|two|three|double|doubled|second|another|pair|bed|first|also|besides)$/;

/** Of these the object is given up, unless a word of direction leads to it. */
export const LEAVES =
  /^(?:chang(?:e|es|ed|ing)|swap(?:s|ped)?|switch(?:es|ed|ing)?|replaced?|mov(?:e|es|ed|ing)|steps?|stepp(?:ed|ing)|dropp?(?:s|ed|ing)?|go|goes|going|went|turn(?:s|ed)?|upgrade|downgrade|pull(?:s|ed)?|upsize|downsize|break|leave|start|starts)$/;
