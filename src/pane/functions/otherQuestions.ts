/** Other ways in which people ask for what a function answers, beside the question in its own help; phrases, apart by |. */
export const otherQuestions: Readonly<Record<string, string>> = {
  BAGS: "fit into a suitcase|how many suitcases or cases|pack or split pieces into bags|which bag does it go in",
  CARRIED:
    "how heavy is it all|total weight|how heavy are the clothes|weight of the pull|what do I carry|weight of all bags",
  CHANGETIME: "minutes from one look to the next|how long is a change|quick change",
  CHASEROWS: "who has not replied or answered|hasnt answered|which lenders to chase|unanswered requests|follow up",
  CLASHES:
    "same piece in two looks|double booked pieces|conflict between looks|piece not out on the shoot day|piece clash",
  COVERGAP: "am I insured for all of it|over the insurance limit|above the cover|underinsured|enough insurance",
  DAYCHANCE: "chance or probability of finishing on time|how likely or risky is overtime|odds of wrap",
  DAYFIT: "will we wrap on time|overtime|does the day run over|minutes to spare|too many looks|are we going over",
  DAYPLAN: "schedule or timetable of the day|running times|when is each look ready|call sheet",
  DAYSLATE: "how many days late or overdue|number of days past due",
  DAYSOUT: "how many days out|how long have I had or held it|days on loan|number of days since pick up or collection",
  DUE: "due date|when does it go back|return date|when to return it|working days after the shoot|how long can I keep it|turn terms such as weeks into a date",
  DUEROWS:
    "what goes back today or tomorrow or next week|what is due soon|returns of the week|list of what is due|what must go back on a day|upcoming returns",
  HOLIDAYS: "bank holidays|public holidays|days off|closed days",
  JOBMONEY: "how much have I spent|budget of the job|costs and expenses|profit|what did the job cost|total spend",
  KEEPCOST: "restocking charge|how much must I keep|keep share of the shop|minimum keep|returning too much",
  LATEFEE: "late fee|penalty|charge or fine for being late",
  LATEROWS: "what is overdue|list of late or overdue pieces|which pieces are late|everything that is late|late returns",
  LENDERTOTALS: "totals for each lender|sum by lender or showroom|pieces from each lender|what have I got from whom",
  LIFTINDEX: "is it too heavy to lift|safe to lift|risk of lifting",
  LIFTLIMIT: "how much can I lift|lifting limit|maximum load to lift",
  LOANSTATE: "status or state of a piece|is it out or back|has it come back|where is it",
  LOOKORDER: "best order of looks|what order should we shoot in|rearrange or reorder looks|fastest order of looks",
  MEALBY: "when is lunch|meal break|latest lunch|catering",
  NEXTLOOK: "what is next|next look|who do I dress next|next change",
  PARCELWEIGHT: "dimensional or volumetric weight|size of the box|parcel weight",
  PEAKVALUE: "most valuable day|highest value|peak or maximum value|worst day for insurance",
  REFUNDS:
    "refund deadline|what can still go back to the shop|returns to shops|money back|receipts to return|take backs",
  RUNCOST: "mileage money|cost of driving|petrol or fuel or car|claim for miles",
  RUNORDER:
    "route for returns or pick ups|best order of pick ups or stops or errands or deliveries|which stop first|driving round|plan a returns route",
  SENDBY: "last day to post or send it|courier deadline|when to ship or book the courier",
  SHOESIZE: "convert a shoe size|european or american or uk size|size conversion",
  SHORTAGES: "missing or damaged or lost pieces|what came back broken|short returns|damage|did all come back",
  TAPE: "how much tape|tape for shoes or soles|gaffer",
  VALUEBYDAY: "value day by day|value of each day|value over time",
  VALUEOUT:
    "value out today|what is everything on the rail worth|total value held|worth of what I hold|insured value|how much value is out",
  WEIGHTS: "weight by kind|which weights are estimated|weight of each kind",
};
