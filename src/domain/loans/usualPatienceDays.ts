/** After how many working days a lender who has not answered is asked again. Common practice, no source. */
export const usualPatienceDays = 2;
