/** What can be wrong when tins are filled, closed, labelled and released. */
export const workFillingProblems = {
  'batch-not-made': {
    says: '{where} is {found, select, making {still being made} abandoned {given up} other {{found}}}; only a finished batch is filled.',
    mend: 'Finish it first.',
  },
  'bowl-empty': {
    says: 'Nothing is left in the bowl of {where}.',
    mend: 'Make another batch; or weigh the bowl and enter the count.',
  },
  'product-of-another-formula': {
    says: '{found} is not made by {allowed}, which is what batch {batch} is.',
    mend: 'Choose a product of that formula.',
  },
  'scale-too-small': {
    says: 'A filled tin weighs about {found} g, and {scale} carries {allowed} g.',
    mend: 'Choose a scale that carries it.',
  },
  'run-not-filling': {
    says: '{where} is {found, select, closed {closed} released {released} rejected {rejected} other {{found}}}, and takes no more weights.',
    mend: 'Start another run for further tins.',
  },
  'tare-missing': {
    says: 'Nobody knows what the empty tin weighs.',
    mend: 'Weigh an empty tin and give its tare, or nought if the scale was set to nought with the tin on it.',
  },
  'net-not-above-nought': {
    says: 'Gross {found} g less tare {allowed} g leaves nothing.',
    mend: 'Weigh the filled tin once more, and check the tare.',
  },
  'net-ten-times-off': {
    says: 'That makes {found} g in a tin that declares {allowed} g.',
    mend: 'Check the decimal point, and the unit on the scale.',
  },
  'net-far-above-label': {
    says: 'That makes {found} g in a tin that states {allowed} g.',
    mend: 'Weigh again, or take another kind of tin; if it is so, say it.',
  },
  'refilled-not-heavier': {
    says: 'Filled up it would hold {found} g, and before it held {allowed} g.',
    mend: 'Look whether it is the same tin, and weigh again; or say that it is so.',
  },
  'tare-odd': {
    says: 'Empty tin {number} weighs {found} g, where the others weigh about {allowed} g{isSlip, select, yes {: did the point slip?} other {.}}',
    mend: 'Take it back and weigh it again, or another tin of the kind; or say that it is so.',
  },
  'tare-unlike': {
    says: 'The empty tin is said to weigh {found} g, and tins of this kind weigh about {allowed} g{isSlip, select, yes {: did the point slip?} other {.}}',
    mend: 'Weigh the empty tin again; a tin that is filled until it looks right would hold too little. Or say that it is so.',
  },
  'scale-was-tared': {
    says: '{gross} g less {tare} g for the tin leaves {found} g. Was the scale at nought with the empty tin on it? Then {gross} g are in the tin, where {allowed} g are aimed at.',
    mend: 'Say so, and nothing is taken off this tin; or weigh it again.',
  },
  'aim-below-label': {
    says: 'The aim of {found} g lies below the label of {allowed} g: every tin would be too light.',
    mend: 'Aim at the label or more; left empty, the page works it out.',
  },
  'tare-forgotten': {
    says: 'That makes {found} g in the tin, where {aim} g is aimed at. The empty tin weighs {allowed} g: with it taken off it would be {withTare} g.',
    mend: 'Give the tare of the tin, or set the scale to nought with the empty tin on it.',
  },
  'light-tins-left': {
    says: '{found, plural, one {One tin is} other {# tins are}} too light: {found, plural, one {number} other {numbers}} {numbers}.',
    mend: 'Fill them up and weigh them again, or leave them out; either way take the old weight out of the run.',
  },
  'light-tins-many': {
    says: 'Below {allowed} g (T1) with the error taken off {found, plural, one {lies one tin} other {lie # tins}} ({numbers}): {many, plural, one {one} other {#}} more than may lie there. As it stands these tins can never be released.',
    mend: 'Fill up {many, plural, one {one of them} other {# of them}} and weigh again, or put it aside: a closed run takes no more weights.',
  },
  'tins-on-held-scale': {
    says: '{found, plural, one {Tin {numbers} was} other {Tins {numbers} were}} weighed on a scale that had not passed its check. Closed like this they can never be released.',
    mend: 'Take those weights out, and weigh the tins again on a scale that passed; or say that it is so.',
  },
  'mean-below-label': {
    says: 'The mean of {tins, plural, one {one tin} other {# tins}} lies below the label: {found} g are missing over all of them. Closed like this they can never be released.',
    mend: 'Fill that much into the lightest tins and weigh them again. A closed run takes no more weights; or say that it is so.',
  },
  'tins-put-aside': {
    says: '{allowed, plural, one {One tin was} other {# tins were}} put aside and {found, plural, =0 {none} one {one} other {#}} counted as spoilt: the rest would stay on the book.',
    mend: 'Count them with the spoilt tins; or, where a tin was emptied and used again, say that it is so.',
  },
  'bowl-filled-elsewhere': {
    says: '{found} g would be booked as thrown away, and {runs} is still filled from the same bowl.',
    mend: 'Weigh what is left in the bowl and enter it as left; or say that it is so.',
  },
  'bowl-held-less': {
    says: 'The bowl held {allowed} g; {filled} g in tins, {retained} g kept and {left} g left make {found} g with what other runs filled.',
    mend: 'Weigh again what is left. If it is right, the yield was wrong: weigh the bowl and enter the count first.',
  },
  'bowl-holds-less': {
    says: 'This tin would hold {found} g, and {allowed} g are left: the bowl held {held} g, and {filled} g are in tins.',
    mend: 'Weigh the tin again and check its tare. If the yield was written down wrong, close the run, weigh what is left in the bowl and enter the count.',
  },
  'part-not-in-product': {
    says: '{where}: this product does not have that part, so none of {found} can be spoilt.',
    mend: 'Put nought there.',
  },
  'packaging-short': {
    says: 'Of {where} there are {found} that may be used, and {allowed} are needed.',
    mend: 'Count the pieces and enter the count, or take in what came.',
  },
  'run-decided-already': {
    says: '{where} is {found, select, released {released} other {rejected}} already, and that is decided once.',
    mend: 'To stop tins that were released, block their lot.',
  },
  'run-still-filling': {
    says: '{where} is still being filled.',
    mend: 'Close it first: count the tins, weigh what is left.',
  },
  'label-not-complete': {
    says: 'The label for {market, select, GB {Great Britain} NI {Northern Ireland} other {the EU}} is not complete: {reason}',
    mend: 'Mend that in the product, the materials or the workshop\u2019s addresses, then print.',
  },
  'label-changed-since': {
    says: 'The label of {where} is not what it was when it was printed: a name, an address or a material was changed since.',
    mend: 'Look at the label, and print it anew.',
  },
  'release-check-failed': {
    says: 'It cannot be released: {reason}',
    mend: 'Mend that and release it then; or reject it with a reason.',
  },
  'reject-reason-missing': {
    says: 'A rejection says why.',
    mend: 'Write the reason down.',
  },
  'area-not-cleared': {
    says: 'Nobody has said yet that the bench is clear for {where}.',
    mend: 'Look that nothing of an earlier product lies there, and say so; or say why it is filled all the same.',
  },
  'area-reason-missing': {
    says: 'The bench is not clear, and no reason is given why it is filled all the same.',
    mend: 'Clear it, or write the reason down: the release shows it.',
  },
  'tin-not-there': {
    says: 'Tin {found} of {run} {how, select, struck {was taken out} other {was weighed again since}}, so it is not filled up.',
    mend: 'Weigh it as a tin of its own, or look at the newest weights.',
  },
  'tin-weighed-again': {
    says: 'Tin {found} was filled up and weighed again since.',
    mend: 'Take the later weight out: that is the one that counts.',
  },
  'more-than-counted-out': {
    says: '{used} used, {spoilt} spoilt and {back} back make {found} {part, select, tin {tins} lid {lids} other {labels}}, and {allowed} were counted out.',
    mend: 'Count again; or correct what was counted out before the first tin.',
  },
} as const;
