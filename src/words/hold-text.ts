/** What holds tins back from their release, in few words. */
export const holdText = `{held, select,
    purpose {they were made as a trial}
    weights {their weights do not stand}
    markets {they were not checked for every market}
    limits {their formula may not be made for sale today}
    report {the assessor’s report is past its review}
    over {more was weighed in than the limits or the report allow}
    below {less was weighed in than the report asks for}
    unnamed {their label does not name all that was weighed in}
    opened {something weighed in is not known}
    worst {the errors of the scales may break a limit}
    revised {their base was revised since}
    dates {something in them ends too early}
    lots {a lot behind them was stopped}
    label {their label is not right}
    other {a check is not passed}}{others, plural, =0 {} one {, and # more is not passed} other {, and # more are not passed}}`;
