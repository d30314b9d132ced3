/** Verbs with which a size is taken, and with which one is wished for. */

/** What one does with the size one decides for. */
export const CHOICE_VERBS =
  /^(?:takes?|took|taken|uses?|used|using|pass|passes|passed|opens?|opened|reach|reaches|picks?|picked|chooses?|chose|hands?|handed|grabs?|grabbed|pulls?|gets?|got|go|goes|going|went|moves?|moved|moving|changes?|changed|switch|switched|swaps?|swapped|fetch|fetched|puts?|put|gives?|gave|tries|try|tried|insert|inserted|places?|placed|selects?|selected|prefer|prefers|load|loads|step|stepped|stepping|upsize|size|draw|bring|thread|means|order|orders|request|want|have|keep)$/;

/** What one does before one decides. */
export const WISH_VERBS =
  /^(?:want|wants|wanted|wanting|need|needs|needed|needing|like|likes|ask|asks|asked|asking|require|requires|required|requiring|prefer|prefers|seek|seeks|seeking|call|calls|called|calling|look|looks|looking|wish|wishes|after|should|must|requested|demand|demands|something|anything)$/;
